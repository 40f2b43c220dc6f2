/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.quantity.LengthUnit;

/**
 * A random passage beside others.
 *
 * @param passage tip first
 * @param occupants what lies still in its lumen
 */
record RandomShared(RandomPassage passage, List<RandomOccupant> occupants) {

    /** Any passage beside one or two others, in a lumen in which every verdict comes up. */
    static RandomShared any(Random random) {
        return of(RandomPassages.any(random), random, random.nextInt(4) == 0 ? 6 : 0);
    }

    /** A passage of which every figure is stated. */
    static RandomShared known(Random random) {
        return of(RandomPassages.known(random), random, 0);
    }

    private static RandomShared of(RandomPassage drawn, Random random, int unknownInOf) {
        RandomPassage alone = new RandomPassage(drawn.shaft(), drawn.bore(), drawn.port(), drawn.wire(),
                Direction.TIP_FIRST, drawn.direction() == Direction.TIP_FIRST ? drawn.beyond() : RandomPassage.NONE,
                drawn.rules());
        List<RandomOccupant> occupants = new ArrayList<>();
        int thickness = 0;
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            int micrometres = 200 + random.nextInt(600);
            thickness = Math.max(thickness, micrometres);
            occupants.add(occupant(random, micrometres, alone.boreLength(), unknownInOf));
        }
        int wider = (thickness - 150 + random.nextInt(300)) * 3000 / (int) RandomFigure.GRAIN;
        return new RandomShared(alone.withBore(f -> f.plus(wider)), occupants);
    }

    private static RandomOccupant occupant(Random random, int micrometres, int boreLength, int unknownInOf) {
        List<RandomSection> shaft = new ArrayList<>();
        int tipAhead = random.nextInt(boreLength + 5) - boreLength + 2;
        int station = 0;
        while (station < boreLength + Math.max(0, tipAhead)) {
            int next = station + 1 + random.nextInt(15);
            shaft.add(RandomSection.between(station, next, micrometres - 50 + random.nextInt(100),
                    use(random, unknownInOf), random));
            station = next;
        }
        int port = random.nextInt(4) == 0 ? random.nextInt(station + 1) : RandomPassage.NONE;
        RandomFigure wire = RandomFigure.near(100 + random.nextInt(250), RandomFigure.anyForm(random), random);
        return new RandomOccupant(shaft, port, wire, tipAhead, random.nextInt(4) == 0);
    }

    private static Use use(Random random, int unknownInOf) {
        if (unknownInOf > 0 && random.nextInt(unknownInOf) == 0) {
            return Use.NOT_STATED;
        }
        return random.nextInt(4) == 0 ? Use.GROWS : Use.PLAIN;
    }

    RandomShared withPassage(RandomPassage other) {
        return new RandomShared(other, occupants);
    }

    RandomShared withOccupants(UnaryOperator<RandomOccupant> change) {
        return new RandomShared(passage, occupants.stream().map(change).toList());
    }

    /** The same without its last occupant. */
    RandomShared withOneLess() {
        return new RandomShared(passage, occupants.subList(0, occupants.size() - 1));
    }

    SampleQuestion question(LengthUnit unit) {
        SampleQuestion question = passage.question(unit);
        for (int i = 0; i < occupants.size(); i++) {
            RandomOccupant occupant = occupants.get(i);
            String ahead = RandomPassage.station(occupant.tipAhead(), unit);
            if (occupant.used()) {
                question.besideUsed(occupant.device("other" + i, unit), ahead);
            } else {
                question.beside(occupant.device("other" + i, unit), ahead);
            }
        }
        return question;
    }

    FitAnswer answer() {
        return question(LengthUnit.MILLIMETRE).answer();
    }
}
