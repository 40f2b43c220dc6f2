/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;

class StiffnessTest {

    @Test
    void readsTheUsualUnits() {
        assertEquals(0, new BigDecimal("151").compareTo(newtonMm2("151 N mm2")));
        assertEquals(0, new BigDecimal("151").compareTo(newtonMm2("1.51 N cm\u00b2")));
        assertEquals(0, new BigDecimal("151").compareTo(newtonMm2("0.000151 N*m^2")));
    }

    /** 1 lbf = 4.4482216152605 N (NIST SP 811, B.8), 1 in = 25.4 mm. */
    @Test
    void readsPoundForceSquareInchesExactly() {
        assertEquals(0, new BigDecimal("2.86981465730146418").compareTo(newtonMm2("0.001 lbf in2")));
    }

    @Test
    void keepsWhatWasTyped() {
        assertEquals("151 N mm2", Stiffness.read("151 N mm2").orElseThrow().text());
    }

    @Test
    void whatIsNoStiffnessIsNone() {
        for (String text : new String[] { "", "stiff", "151", "151 N", "151 N in2", "0 N mm2", "-1 N mm2",
            "1,5 N mm2" }) {
            assertTrue(Stiffness.read(text).isEmpty(), text);
        }
        assertThrows(IllegalArgumentException.class, () -> new Stiffness(BigDecimal.ZERO, "0 N mm2"));
    }

    private static BigDecimal newtonMm2(String text) {
        return Stiffness.read(text).orElseThrow().newtonMm2();
    }
}
