/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Flow in an empty tube; its check values stand in {@code shared/flow.csv}. */
class PoiseuilleTest {

    /** Half the diameter needs sixteen times the pressure. */
    @Test
    void pressureGoesWithTheLengthAndTheFourthPowerOfTheDiameter() {
        double wide = Poiseuille.pressureDropPa(0.008, 1, 4e-6, 2e-3);
        assertEquals(16 * wide, Poiseuille.pressureDropPa(0.008, 1, 4e-6, 1e-3), 1e-6);
        assertEquals(2 * wide, Poiseuille.pressureDropPa(0.008, 2, 4e-6, 2e-3), 1e-6);
        assertEquals(0, Poiseuille.pressureDropPa(0.008, 1, 0, 1e-3));
    }

    /** About 4 cm of a metre for a guide of 0.070 in and Re 483; reference of the trade, computed. */
    @Test
    void entranceIsShort() {
        assertEquals(0.043, Poiseuille.entranceLengthM(483, 1.778e-3), 5e-4);
        assertEquals(0, Poiseuille.entranceLengthM(0, 1.778e-3));
    }

    @Test
    void namesWhatIsWrong() {
        assertRefused("viscosity must be positive: 0.0", () -> Poiseuille.pressureDropPa(0, 1, 1, 1));
        assertRefused("length must be finite and not negative: -1.0", () -> Poiseuille.pressureDropPa(1, -1, 1, 1));
        assertRefused("flow must be finite and not negative: NaN",
                () -> Poiseuille.pressureDropPa(1, 1, Double.NaN, 1));
        assertRefused("diameter must be positive: 0.0", () -> Poiseuille.pressureDropPa(1, 1, 1, 0));
        assertRefused("density must be finite and not negative: Infinity",
                () -> Poiseuille.reynolds(Double.POSITIVE_INFINITY, 1, 1, 1));
        assertRefused("Reynolds number must be finite and not negative: -1.0",
                () -> Poiseuille.entranceLengthM(-1, 1));
    }

    private static void assertRefused(String message, Executable call) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, call).getMessage());
    }
}
