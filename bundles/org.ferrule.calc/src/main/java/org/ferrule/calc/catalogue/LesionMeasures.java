/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Measures of a lesion in the units that scores are printed in, fine enough to keep the side of every threshold. */
final class LesionMeasures {
    private static final int DECIMALS = 9;

    private LesionMeasures() {
    }

    static BigDecimal mm(Length length) {
        return length.in(LengthUnit.MILLIMETRE, DECIMALS, RoundingMode.HALF_EVEN);
    }

    static BigDecimal degrees(double degrees) {
        return BigDecimal.valueOf(degrees).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    }
}
