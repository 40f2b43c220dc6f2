/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Checks where discs lie in exact arithmetic: a double is a fraction like any other. */
final class Exactly {
    private static final BigDecimal HALF_THIRDS = BigDecimal.valueOf(2 * LengthUnit.MILLIMETRE.thirdNanometres());
    /** Where a closed form is exact, its places are the nearest doubles: a millionth of a nanometre is far more. */
    private static final BigDecimal NEAREST_DOUBLES = new BigDecimal("1e-5");

    private Exactly() {
    }

    /** Checks that the discs lie in the circle and that none overlaps another. */
    static void assertCertified(Enclosure enclosure) {
        assertInside(enclosure);
        List<PlacedDisc> discs = enclosure.discs();
        for (int i = 0; i < discs.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertApart(enclosure, discs.get(i), discs.get(j));
            }
        }
    }

    /** Checks that the discs have these diameters and lie in the circle. */
    static void assertHolds(Enclosure enclosure, List<Length> diameters) {
        assertEquals(diameters, enclosure.discs().stream().map(PlacedDisc::diameter).toList());
        assertInside(enclosure);
    }

    private static void assertInside(Enclosure enclosure) {
        for (PlacedDisc disc : enclosure.discs()) {
            BigDecimal most = whole(enclosure.upperDiameter().minus(disc.diameter())).add(slack(enclosure));
            assertTrue(most.signum() >= 0 && squared(disc.xMm(), disc.yMm()).compareTo(most.multiply(most)) <= 0,
                    () -> "outside: " + disc + " of " + enclosure);
        }
    }

    /** Checks that two discs of an answer do not overlap. */
    static void assertApart(Enclosure enclosure, PlacedDisc one, PlacedDisc other) {
        BigDecimal least = whole(one.diameter().plus(other.diameter())).subtract(slack(enclosure));
        BigDecimal dx = new BigDecimal(one.xMm()).subtract(new BigDecimal(other.xMm())).multiply(HALF_THIRDS);
        BigDecimal dy = new BigDecimal(one.yMm()).subtract(new BigDecimal(other.yMm())).multiply(HALF_THIRDS);
        assertTrue(least.signum() <= 0 || dx.multiply(dx).add(dy.multiply(dy)).compareTo(least.multiply(least)) >= 0,
                () -> "overlap: " + one + " and " + other + " of " + enclosure);
    }

    private static BigDecimal slack(Enclosure enclosure) {
        return enclosure.isExact() ? NEAREST_DOUBLES : BigDecimal.ZERO;
    }

    private static BigDecimal squared(double x, double y) {
        BigDecimal wholeX = new BigDecimal(x).multiply(HALF_THIRDS);
        BigDecimal wholeY = new BigDecimal(y).multiply(HALF_THIRDS);
        return wholeX.multiply(wholeX).add(wholeY.multiply(wholeY));
    }

    private static BigDecimal whole(Length length) {
        return BigDecimal.valueOf(length.thirdNanometres());
    }
}
