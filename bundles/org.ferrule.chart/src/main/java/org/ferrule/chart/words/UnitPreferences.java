/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.LengthUnit;

/**
 * In which units diameters and clearances are written. Distances along a device are always in centimetres, as on
 * labels.
 *
 * @param primary millimetre, inch or French
 * @param secondary written in brackets behind; absent for none
 * @param millimetreDecimals decimals of millimetres and French sizes, 1 to 4; inches have two more
 */
public record UnitPreferences(LengthUnit primary, Optional<LengthUnit> secondary, int millimetreDecimals) {
    private static final int LEAST_DECIMALS = 1;
    private static final int MOST_DECIMALS = 4;

    public UnitPreferences {
        requireDiameterUnit(primary);
        Objects.requireNonNull(secondary, "secondary").ifPresent(UnitPreferences::requireDiameterUnit);
        if (millimetreDecimals < LEAST_DECIMALS || millimetreDecimals > MOST_DECIMALS) {
            throw new IllegalArgumentException(
                    "decimals of millimetres must be 1 to 4, not " + millimetreDecimals);
        }
    }

    /** One unit with two decimals of a millimetre. */
    public static UnitPreferences in(LengthUnit primary) {
        return new UnitPreferences(primary, Optional.empty(), 2);
    }

    /** These units with another in brackets. */
    public UnitPreferences with(LengthUnit second) {
        return new UnitPreferences(primary, Optional.of(second), millimetreDecimals);
    }

    /** The decimals for figures in that unit. */
    int decimals(LengthUnit unit) {
        return unit == LengthUnit.INCH ? millimetreDecimals + 2 : millimetreDecimals;
    }

    private static void requireDiameterUnit(LengthUnit unit) {
        boolean usual = unit == LengthUnit.MILLIMETRE || unit == LengthUnit.INCH || unit == LengthUnit.FRENCH;
        if (!usual) {
            throw new IllegalArgumentException("diameters are written in mm, in or Fr, not in " + unit.symbol());
        }
    }
}
