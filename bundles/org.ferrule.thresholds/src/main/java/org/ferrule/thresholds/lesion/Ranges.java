/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.lesion;

import java.math.BigDecimal;
import java.util.Optional;

/** What angles and lengths can be. */
final class Ranges {
    private static final BigDecimal HALF_TURN = BigDecimal.valueOf(180);
    private static final BigDecimal FULL_TURN = BigDecimal.valueOf(360);
    private static final BigDecimal LONGEST_MM = BigDecimal.valueOf(500);

    private Ranges() {
    }

    static void checkDegrees(String what, Optional<BigDecimal> degrees) {
        check(what, degrees, HALF_TURN, "degrees");
    }

    static void checkFullCircle(String what, Optional<BigDecimal> degrees) {
        check(what, degrees, FULL_TURN, "degrees");
    }

    static void checkLength(String what, Optional<BigDecimal> mm) {
        check(what, mm, LONGEST_MM, "mm");
    }

    private static void check(String what, Optional<BigDecimal> value, BigDecimal most, String unit) {
        if (value.filter(v -> v.signum() < 0 || v.compareTo(most) > 0).isPresent()) {
            throw new IllegalArgumentException(
                    what + " of " + value.get().toPlainString() + " " + unit + " is not between 0 and " + most);
        }
    }
}
