/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.math.RoundingMode;

import org.ferrule.fit.engineering.size.Size;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthFormat;
import org.ferrule.quantity.LengthUnit;

/** Writes sizes that people go by: the largest of a shaft rounded down, the smallest of a lumen up. */
final class Sizes {
    private static final int MM_DECIMALS = 4;
    private static final int INCH_DECIMALS = 5;

    private final LengthFormat mm;
    private final LengthFormat inch;

    private Sizes(RoundingMode rounding) {
        this.mm = LengthFormat.of(LengthUnit.MILLIMETRE, MM_DECIMALS, rounding);
        this.inch = LengthFormat.of(LengthUnit.INCH, INCH_DECIMALS, rounding);
    }

    static RoundingMode rounding(boolean bore) {
        return bore ? RoundingMode.CEILING : RoundingMode.FLOOR;
    }

    static Sizes of(boolean bore) {
        return new Sizes(rounding(bore));
    }

    String format(Size size) {
        return size.isUniform() ? format(size.distal())
                : format(size.distal()) + " distal, " + format(size.proximal()) + " proximal";
    }

    String format(Length length) {
        return mm.format(length) + " (" + inch.format(length) + ")";
    }
}
