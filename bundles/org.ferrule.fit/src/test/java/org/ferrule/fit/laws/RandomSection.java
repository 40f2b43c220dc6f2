/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.Random;
import java.util.function.UnaryOperator;

import org.ferrule.fit.laws.RandomFigure.Form;

/**
 * A stretch of a shaft or of a lumen.
 *
 * @param from station of its nearer end, in steps
 * @param to station of its farther end, in steps
 * @param start figure at its nearer end
 * @param end figure at its farther end
 * @param use whether its diameter is stated at all, and what use does to it
 */
record RandomSection(int from, int to, RandomFigure start, RandomFigure end, Use use) {

    enum Use {
        PLAIN, GROWS, STATED, NOT_STATED
    }

    /** A section of some micrometres, tapered in one of three cases. */
    static RandomSection between(int from, int to, int micrometres, Use use, Random random) {
        Form form = RandomFigure.anyForm(random);
        RandomFigure start = RandomFigure.near(micrometres, form, random);
        boolean tapers = random.nextInt(3) == 0;
        return new RandomSection(from, to, start,
                tapers ? RandomFigure.near(micrometres - 100 + random.nextInt(200), form, random) : start, use);
    }

    /** The same section with other figures. */
    RandomSection with(UnaryOperator<RandomFigure> change) {
        return new RandomSection(from, to, change.apply(start), change.apply(end), use);
    }

    /** The same section without any change by use. */
    RandomSection asItIs() {
        return switch (use) {
            case PLAIN, NOT_STATED -> this;
            case GROWS, STATED -> new RandomSection(from, to, start, start, Use.PLAIN);
        };
    }

    /** The same section counted from the other end of a whole. */
    RandomSection mirrored(int whole) {
        return new RandomSection(whole - to, whole - from, end, start, use);
    }
}
