/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes shares and chances as percentages with two digits. */
final class ShareWords {
    private static final int DIGITS = 2;
    /** In per cent; what is less is written as less than this. */
    private static final BigDecimal LEAST = new BigDecimal("0.0001");

    private ShareWords() {
    }

    /** A bound that is not surpassed: rounded up. */
    static String atMost(double share) {
        return percent(share, RoundingMode.CEILING);
    }

    /** A bound that is reached: rounded down. */
    static String atLeast(double share) {
        return percent(share, RoundingMode.FLOOR);
    }

    /** To the nearest. */
    static String plain(double share) {
        return percent(share, RoundingMode.HALF_EVEN);
    }

    private static String percent(double share, RoundingMode rounding) {
        BigDecimal percent = BigDecimal.valueOf(share).movePointRight(2).round(new MathContext(DIGITS, rounding));
        boolean vanishes = percent.signum() > 0 && percent.compareTo(LEAST) < 0;
        return (vanishes ? "<" + LEAST.toPlainString() : plainNumber(percent)) + " %";
    }

    private static String plainNumber(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0) : stripped).toPlainString();
    }
}
