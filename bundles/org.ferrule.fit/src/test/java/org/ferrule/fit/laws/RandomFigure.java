/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.Random;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/**
 * A figure that can be printed in several forms and units.
 *
 * @param form how it is printed
 * @param printed the figure that stands on the label, in {@link #GRAIN}s
 * @param below the tolerance below, in grains
 * @param above the tolerance above, in grains
 */
record RandomFigure(Form form, int printed, int below, int above) {
    /** 127 nm, the smallest length of which multiples have six decimals in mm, in and Fr. */
    static final long GRAIN = 381;

    enum Form {
        PLAIN, TOLERANCE, RANGE, MAX, MIN
    }

    /** A figure of a form near a number of micrometres. */
    static RandomFigure near(int micrometres, Form form, Random random) {
        int spread = random.nextInt(200);
        int other = form == Form.RANGE ? spread : random.nextInt(200);
        return new RandomFigure(form, micrometres * 3000 / (int) GRAIN + random.nextInt(9), spread, other);
    }

    static Form anyForm(Random random) {
        return Form.values()[random.nextInt(Form.values().length)];
    }

    RandomFigure plus(int grains) {
        return new RandomFigure(form, printed + grains, below, above);
    }

    /** The same figure with more tolerance, where it prints one. */
    RandomFigure wider(int grains) {
        return new RandomFigure(form, printed, below + grains, above + grains);
    }

    /** The text on the label. */
    String text(LengthUnit unit) {
        LengthFormat format = LengthFormat.faithful(unit);
        return switch (form) {
            case PLAIN -> format.format(length(printed));
            case TOLERANCE -> format.format(length(printed)) + " +" + format.number(length(above)) + "/-"
                    + format.number(length(below));
            case RANGE -> format.number(length(printed - below)) + ".." + format.format(length(printed + above));
            case MAX -> format.format(length(printed)) + " max";
            case MIN -> format.format(length(printed)) + " min";
        };
    }

    /** The interval that it stands for, in thirds of a nanometre: what the contract says, worked out once more. */
    Interval interval(int spanBelow, int spanAbove) {
        return switch (form) {
            case PLAIN -> Interval.of(printed - spanBelow, printed, printed + spanAbove, false);
            case TOLERANCE -> Interval.of(printed - below, printed, printed + above, false);
            case RANGE -> Interval.of(printed - below, printed, printed + above, true);
            case MAX -> Interval.of(printed - spanAbove - spanBelow, printed - spanAbove, printed, true);
            case MIN -> Interval.of(printed, printed + spanBelow, printed + spanBelow + spanAbove, true);
        };
    }

    static Length length(int grains) {
        return new Length(grains * GRAIN);
    }

    /** Low, centre and high in thirds of a nanometre, and whether the centre is assumed. */
    record Interval(double low, double centre, double high, boolean assumed) {
        private static Interval of(int low, int centre, int high, boolean assumed) {
            return new Interval((double) low * GRAIN, (double) centre * GRAIN, (double) high * GRAIN, assumed);
        }

        Interval plus(Interval other) {
            return new Interval(low + other.low, centre + other.centre, high + other.high, assumed || other.assumed);
        }

        Interval grown(double lowFactor, double centreFactor, double highFactor) {
            return new Interval(low * lowFactor, centre * centreFactor, high * highFactor, true);
        }

        Interval towards(Interval other, double share) {
            return new Interval(low + share * (other.low - low), centre + share * (other.centre - centre),
                    high + share * (other.high - high), assumed || other.assumed);
        }
    }
}
