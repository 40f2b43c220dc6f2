/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class VerdictLookTest {
    /** CIEDE2000; 2 to 3 is what people notice between neighbours, 10 is plain at a glance (common practice). */
    private static final double APART = 10;
    /** WCAG 2.2, success criterion 1.4.3 (text) and 1.4.11 (shapes), from memory. */
    private static final double READABLE = 4.5;

    static Stream<Arguments> eyesAndSchemes() {
        return Arrays.stream(ColourVision.values())
                .flatMap(eyes -> Arrays.stream(Scheme.values()).map(scheme -> Arguments.of(eyes, scheme)));
    }

    @ParameterizedTest
    @MethodSource("eyesAndSchemes")
    void groundsAreApartOrHatchedDifferently(ColourVision eyes, Scheme scheme) {
        for (VerdictLook one : VerdictLook.values()) {
            for (VerdictLook other : VerdictLook.values()) {
                if (one.compareTo(other) < 0) {
                    double apart = apart(one, other, eyes, scheme);
                    assertTrue(apart >= APART || hatchedDifferently(one, other, scheme),
                            one + " and " + other + " to " + eyes + " on " + scheme + ": " + apart);
                }
            }
        }
    }

    /** The three verdicts that geometry gives never rely on a hatch to be told apart. */
    @ParameterizedTest
    @MethodSource("eyesAndSchemes")
    void fitsTightAndBlockedAreApartByColourAlone(ColourVision eyes, Scheme scheme) {
        assertTrue(apart(VerdictLook.FITS, VerdictLook.TIGHT, eyes, scheme) >= APART);
        assertTrue(apart(VerdictLook.TIGHT, VerdictLook.BLOCKED, eyes, scheme) >= 2 * APART);
        assertTrue(apart(VerdictLook.FITS, VerdictLook.BLOCKED, eyes, scheme) >= 3 * APART);
    }

    private static double apart(VerdictLook one, VerdictLook other, ColourVision eyes, Scheme scheme) {
        return eyes.lab(one.tone(scheme).ground()).difference(eyes.lab(other.tone(scheme).ground()));
    }

    private static boolean hatchedDifferently(VerdictLook one, VerdictLook other, Scheme scheme) {
        return !one.tone(scheme).hatch().map(h -> h.pattern()).equals(other.tone(scheme).hatch().map(h -> h.pattern()));
    }

    @ParameterizedTest
    @EnumSource(VerdictLook.class)
    void inkCanBeReadOnGroundAndOnHatch(VerdictLook look) {
        for (Scheme scheme : Scheme.values()) {
            Tone tone = look.tone(scheme);
            assertTrue(contrast(tone.ink(), tone.ground()) >= READABLE, look + " on " + scheme);
            tone.hatch().ifPresent(hatch -> assertTrue(contrast(tone.ink(), hatch.ink()) >= READABLE,
                    look + " on its hatch on " + scheme));
        }
    }

    private static double contrast(Ink one, Ink other) {
        double a = ColourVision.luminance(ColourVision.linear(one)) + 0.05;
        double b = ColourVision.luminance(ColourVision.linear(other)) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** ISO 15223-1 aside, the scheme of traffic lights is not ours: no ground is red, amber or green. */
    @ParameterizedTest
    @EnumSource(VerdictLook.class)
    void noGroundIsOfATrafficLight(VerdictLook look) {
        for (Scheme scheme : Scheme.values()) {
            Ink ground = look.tone(scheme).ground();
            boolean blueIsLeast = ground.blue() < ground.red() && ground.blue() < ground.green();
            boolean greenLeads = ground.green() > ground.red() && ground.green() > ground.blue();
            assertTrue(!blueIsLeast && !greenLeads, look + " on " + scheme + " is " + ground.hex());
        }
    }

    @Test
    void everyLookHasItsOwnShapeAndWord() {
        VerdictLook[] looks = VerdictLook.values();
        assertEquals(looks.length, distinct(Arrays.stream(looks).map(VerdictLook::glyph)));
        assertEquals(looks.length, distinct(Arrays.stream(looks).map(VerdictLook::word)));
        assertEquals(SideMark.values().length, distinct(Arrays.stream(SideMark.values()).map(SideMark::word)));
    }

    @Test
    void everyShapeIsDrawnDifferentlyAndInsideItsSquare() {
        Set<List<?>> drawn = new HashSet<>();
        for (Glyph glyph : Glyph.values()) {
            PictureBuilder builder = new PictureBuilder();
            glyph.draw(builder, new Point(5, 5), 4, Ink.TEXT);
            assertTrue(drawn.add(builder.elements()), glyph + " looks like another");
            assertTrue(builder.picture(10, 10, "").groupsAt(new Point(5, 5), 0).isEmpty(), "no name of its own");
        }
    }

    private static long distinct(Stream<?> values) {
        return values.distinct().count();
    }

    @Test
    void onlyAFitByClaimLooksDifferentByAuthority() {
        assertEquals(VerdictLook.FITS_BY_CLAIM, VerdictLook.of(Verdict.FITS, Authority.CLAIM));
        assertEquals(VerdictLook.FITS, VerdictLook.of(Verdict.FITS, Authority.BENCH));
        for (Verdict verdict : List.of(Verdict.TIGHT, Verdict.UNKNOWN, Verdict.BLOCKED)) {
            assertEquals(verdict.word(), VerdictLook.of(verdict, Authority.CLAIM).word());
            assertNotEquals(VerdictLook.FITS, VerdictLook.of(verdict, Authority.GEOMETRY));
        }
    }

    @Test
    void schemesShareTheRolesOfTheirInks() {
        for (VerdictLook look : VerdictLook.values()) {
            assertEquals(look.tone(Scheme.LIGHT).ground().role(), look.tone(Scheme.DARK).ground().role());
            assertEquals(look.tone(Scheme.LIGHT).ink().role(), look.tone(Scheme.DARK).ink().role());
        }
    }
}
