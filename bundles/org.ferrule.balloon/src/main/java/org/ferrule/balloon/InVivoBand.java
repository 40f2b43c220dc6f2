/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.balloon;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.quantity.Length;

/**
 * What a table's diameter may be worth in a vessel. In one published series tables over-stated the diameter reached
 * there by 14 % (standard deviation 8 %) for one kind of balloon and 18 % (8 %) for another, single balloons by 1 to
 * 41 %. This is a band to be careful with, not a correction: it says nothing of the next balloon or vessel. Its ends
 * cover both ways in which such a share can be meant, of the diameter in the table or of the one in the vessel.
 *
 * @param low 18 % of the table's diameter less, rounded down
 * @param high the table's diameter over 1.14, rounded up
 */
public record InVivoBand(Length low, Length high) {
    /** Where the figures were published. */
    public static final String SOURCE = "Hehrlein et al., Catheter Cardiovasc Interv 2001;53:474";
    private static final int LEAST_PERCENT = 14;
    private static final int MOST_PERCENT = 18;

    /**
     * Returns the band about a diameter in the table.
     *
     * @throws IllegalArgumentException naming the diameter if it is negative
     */
    public static InVivoBand of(Length tableDiameter) {
        if (tableDiameter.isNegative()) {
            throw new IllegalArgumentException("negative diameter: " + tableDiameter);
        }
        return new InVivoBand(part(tableDiameter, 100 - MOST_PERCENT, 100, RoundingMode.FLOOR),
                part(tableDiameter, 100, 100 + LEAST_PERCENT, RoundingMode.CEILING));
    }

    private static Length part(Length length, int numerator, int denominator, RoundingMode rounding) {
        BigDecimal thirds = BigDecimal.valueOf(length.times(numerator).thirdNanometres())
                .divide(BigDecimal.valueOf(denominator), 0, rounding);
        return new Length(thirds.longValueExact());
    }
}
