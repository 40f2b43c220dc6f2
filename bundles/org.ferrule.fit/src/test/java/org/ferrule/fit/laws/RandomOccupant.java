/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.List;
import java.util.function.UnaryOperator;

import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.quantity.LengthUnit;

/**
 * A device that lies still.
 *
 * @param shaft its sections, from its tip
 * @param port station of the exit port in steps; {@link RandomPassage#NONE}: it has no wire of its own
 * @param wire the wire beside its shaft proximal to the port
 * @param tipAhead how far its tip lies beyond the distal opening of the lumen, in steps
 * @param used whether it has its outline after use
 */
record RandomOccupant(List<RandomSection> shaft, int port, RandomFigure wire, int tipAhead, boolean used) {

    RandomOccupant with(UnaryOperator<RandomFigure> change) {
        return new RandomOccupant(shaft.stream().map(s -> s.with(change)).toList(), port, change.apply(wire),
                tipAhead, used);
    }

    RandomOccupant at(int otherTipAhead) {
        return new RandomOccupant(shaft, port, wire, otherTipAhead, used);
    }

    RandomOccupant afterUse() {
        return new RandomOccupant(shaft, port, wire, tipAhead, true);
    }

    SampleDevice device(String id, LengthUnit unit) {
        return RandomPassage.device(id, shaft, port, wire, unit);
    }
}
