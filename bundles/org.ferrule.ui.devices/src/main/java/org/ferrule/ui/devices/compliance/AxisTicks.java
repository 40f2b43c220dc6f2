/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.compliance;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;

/**
 * Round numbers along an axis.
 *
 * @param low the first, at most the least value
 * @param high the last, at least the greatest value
 * @param step between two of them
 */
record AxisTicks(BigDecimal low, BigDecimal high, BigDecimal step) {

    private static final List<BigDecimal> ROUND = Stream.of("1", "2", "5", "10").map(BigDecimal::new).toList();

    /**
     * Finds round numbers around a range.
     *
     * @param most about how many of them at most, 2 or more
     */
    static AxisTicks around(double least, double greatest, int most) {
        double span = Math.max(greatest - least, Math.max(1e-3, Math.abs(greatest) * 0.05));
        int exponent = (int) Math.floor(Math.log10(span / most));
        BigDecimal unit = BigDecimal.ONE.scaleByPowerOfTen(exponent);
        BigDecimal step = ROUND.stream().map(unit::multiply).filter(s -> span / s.doubleValue() <= most).findFirst()
                .orElse(unit.multiply(BigDecimal.TEN));
        return new AxisTicks(multiple(least, step, RoundingMode.FLOOR),
                multiple(Math.max(greatest, least + span), step, RoundingMode.CEILING), step);
    }

    private static BigDecimal multiple(double value, BigDecimal step, RoundingMode rounding) {
        return BigDecimal.valueOf(value).divide(step, 0, rounding).multiply(step);
    }

    List<BigDecimal> values() {
        return Stream.iterate(low, value -> value.compareTo(high) <= 0, value -> value.add(step)).toList();
    }

    /** How far a value lies between the first and the last, 0 to 1. */
    double share(double value) {
        return (value - low.doubleValue()) / (high.doubleValue() - low.doubleValue());
    }

    static String number(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
