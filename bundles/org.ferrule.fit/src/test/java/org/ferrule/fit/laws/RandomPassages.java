/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.ferrule.fit.laws.RandomPassage.RandomRules;
import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;

/** Makes random passages in which every verdict comes up. */
final class RandomPassages {
    private RandomPassages() {
    }

    /** Any passage. */
    static RandomPassage any(Random random) {
        return passage(random, random.nextInt(4) == 0 ? 6 : 0);
    }

    /** A passage of which every figure is stated. */
    static RandomPassage known(Random random) {
        return passage(random, 0);
    }

    private static RandomPassage passage(Random random, int unknownInOf) {
        int thickness = 600 + random.nextInt(400);
        List<RandomSection> shaft = shaft(random, thickness, unknownInOf);
        List<RandomSection> bore = bore(random, thickness + random.nextInt(400), unknownInOf);
        int end = shaft.get(shaft.size() - 1).to();
        int port = random.nextInt(3) == 0 ? random.nextInt(end + 1) : RandomPassage.NONE;
        RandomFigure wire = RandomFigure.near(100 + random.nextInt(250), RandomFigure.anyForm(random), random);
        Direction direction = Direction.values()[random.nextInt(2)];
        return new RandomPassage(shaft, bore, port, wire, direction, beyond(random, direction),
                RandomRules.any(random));
    }

    private static int beyond(Random random, Direction direction) {
        if (direction == Direction.OVER_WIRE_TAIL) {
            return random.nextInt(6);
        }
        return random.nextBoolean() ? RandomPassage.NONE : random.nextInt(20) - 5;
    }

    private static List<RandomSection> shaft(Random random, int thickness, int unknownInOf) {
        List<RandomSection> sections = new ArrayList<>();
        int station = 0;
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            int next = station + 1 + random.nextInt(15);
            sections.add(RandomSection.between(station, next, thickness - 100 + random.nextInt(200),
                    use(random, unknownInOf), random));
            station = next;
        }
        return sections;
    }

    private static Use use(Random random, int unknownInOf) {
        if (unknownInOf > 0 && random.nextInt(unknownInOf) == 0) {
            return Use.NOT_STATED;
        }
        return switch (random.nextInt(6)) {
            case 0 -> Use.GROWS;
            case 1 -> Use.STATED;
            default -> Use.PLAIN;
        };
    }

    private static List<RandomSection> bore(Random random, int width, int unknownInOf) {
        List<RandomSection> sections = new ArrayList<>();
        int station = 0;
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            int next = station + 1 + random.nextInt(15);
            boolean unknown = unknownInOf > 0 && random.nextInt(unknownInOf) == 0;
            sections.add(RandomSection.between(station, next, width - 50 + random.nextInt(100),
                    unknown ? Use.NOT_STATED : Use.PLAIN, random));
            station = next;
        }
        return sections;
    }
}
