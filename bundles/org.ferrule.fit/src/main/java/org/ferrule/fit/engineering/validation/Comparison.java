/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A published value beside a computed one.
 *
 * @param expected as published
 * @param computed as computed
 * @param tolerance in words
 * @param passed whether they agree
 */
record Comparison(String expected, String computed, String tolerance, boolean passed) {
    private static final MathContext SHOWN = new MathContext(10);
    /** A published figure that lies in the middle between two printed ones may have been rounded either way. */
    private static final double EITHER_WAY = 1.01;

    /** Numbers that must agree to the last printed digit. */
    static Comparison toLastDigit(String published, double computed) {
        return within(published, computed, 0);
    }

    /** Numbers that must agree to the last printed digit and a rounding of the method. */
    static Comparison within(String published, double computed, double rounding) {
        BigDecimal expected = new BigDecimal(published);
        double most = expected.ulp().doubleValue() / 2 * EITHER_WAY + rounding;
        boolean passed = Math.abs(expected.doubleValue() - computed) <= most;
        return new Comparison(published, shown(computed), "±" + new BigDecimal(most).round(new MathContext(2)),
                passed);
    }

    /** Words or whole numbers that must be the same. */
    static Comparison same(String published, String computed) {
        return new Comparison(published, computed, "exact", published.equals(computed));
    }

    private static String shown(double value) {
        return new BigDecimal(value).round(SHOWN).stripTrailingZeros().toString();
    }

    /** Both must agree. */
    Comparison and(Comparison other) {
        return new Comparison(expected + "; " + other.expected, computed + "; " + other.computed,
                tolerance + "; " + other.tolerance, passed && other.passed);
    }
}
