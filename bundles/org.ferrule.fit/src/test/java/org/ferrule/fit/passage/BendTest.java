/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Bends have a length, and measures above zero. */
class BendTest {

    private static Bend bend(String radius, String angle, String vessel) {
        return new Bend(Bend.Where.VESSEL, length(radius), Optional.of(new BigDecimal(angle)),
                Optional.of(length(vessel)));
    }

    /** A quarter of a turn of 20 mm is 10 pi mm. */
    @Test
    void lengthFollowsTheCentreLine() {
        assertEquals(10 * Math.PI, bend("20 mm", "90", "3 mm").length().orElseThrow().mm(), 1e-6);
        assertEquals(Optional.empty(), new Bend(Bend.Where.LUMEN, length("20 mm"), Optional.empty()).length());
    }

    @Test
    void measuresOfNothingAreRefused() {
        assertRefused("radius", () -> bend("0 mm", "90", "3 mm"));
        assertRefused("radius", () -> bend("-1 mm", "90", "3 mm"));
        assertRefused("vessel", () -> bend("20 mm", "90", "0 mm"));
        assertRefused("angle", () -> bend("20 mm", "0", "3 mm"));
        assertRefused("angle", () -> bend("20 mm", "-90", "3 mm"));
    }

    private static void assertRefused(String what, Executable bend) {
        String message = assertThrows(IllegalArgumentException.class, bend).getMessage();
        assertTrue(message.contains(what), message);
    }
}
