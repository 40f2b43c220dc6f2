/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

import org.ferrule.chart.Shelf;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.junit.jupiter.api.Test;

/** Looks of curves, inks on dark screens, and the mark of what is worse coming out. */
class CurveLookTest {
    @Test
    void everyCurveHasAColourAndADashOrHatchOfItsOwnInBothSchemes() {
        Set<Object> seen = new HashSet<>();
        for (int i = 0; i < 8; i++) {
            CurveLook look = CurveLook.of(i);
            assertEquals("curve." + (i + 1), look.ink().role());
            assertTrue(seen.add(look.ink().hex()) && seen.add(look.dash()), look::toString);
            Ink dark = DrawingInks.in(Scheme.DARK, look.ink());
            assertTrue(seen.add("dark " + dark.hex()), look::toString);
            assertEquals(look.ink().role(), dark.role());
            assertEquals(look.ink(), DrawingInks.in(Scheme.LIGHT, look.ink()));
            assertEquals(look.dash(), look.stroke(0.5).dash());
            assertEquals(look.ink(), look.stroke(0.5).ink());
            assertEquals(look.hatch().pattern() == Hatch.Pattern.DOTS ? 0.25 : 0.1, look.hatch().widthMm());
            assertEquals(look.ink(), look.hatch().ink());
        }
    }

    @Test
    void anInkThatNobodyKnowsStaysAsItIs() {
        Ink own = Ink.of("somebody.elses", 0x123456);
        assertEquals(own, DrawingInks.in(Scheme.DARK, own));
        assertFalse(Ink.TEXT.hex().equals(DrawingInks.in(Scheme.DARK, Ink.TEXT).hex()));
    }

    @Test
    void comingOutIsMarkedOnlyWhereItIsWorse() {
        FitCell grows = FitCell.of(Shelf.answer(Shelf.question(Shelf.guide("5 Fr", "0.040 in"),
                Shelf.balloon("x", "0.82 mm"))));
        FitCell same = FitCell.of(Shelf.answer(Shelf.question(Shelf.guide("6 Fr", "0.070 in"), Shelf.microcatheter())));
        assertEquals(Optional.empty(), VerdictLook.worseOut(same));
        assertEquals(same.in(), same.out());
        FitCell worse = new FitCell(same.in(), grows.out(), false, false, Optional.empty());
        assertTrue(grows.out().verdict() != Verdict.FITS, grows::toString);
        assertEquals(Optional.of(VerdictLook.of(grows.out())), VerdictLook.worseOut(worse));
        assertEquals(Optional.empty(),
                VerdictLook.worseOut(new FitCell(grows.out(), same.in(), false, false, Optional.empty())));
    }
}
