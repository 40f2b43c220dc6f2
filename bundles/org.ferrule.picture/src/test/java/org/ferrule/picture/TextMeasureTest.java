/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class TextMeasureTest {

    private final TextMeasure measure = TextMeasure.standard();

    @Test
    void emIsOneInchAtSeventyTwoPoints() {
        assertEquals(25.4, TextStyle.ofPt(72).sizeMm(), 1e-12);
        assertEquals(72, TextStyle.ofMm(25.4).sizePt(), 1e-12);
    }

    /** Digits have one width, so that columns of figures stand in line: 1303/2048 em, as seen in the font. */
    @Test
    void digitsHaveOneWidth() {
        for (char digit = '0'; digit <= '9'; digit++) {
            assertEquals(25.4 * 1303 / 2048, measure.widthMm(String.valueOf(digit), TextStyle.ofPt(72)), 1e-9);
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyFaceKnowsTheSignsOfTheTrade(FontFace face) {
        TextStyle style = TextStyle.ofPt(10).in(face);
        for (String sign : "± ≤ ≥ µ ⌀ – × → ← ↔ ° ½ é Å ß ő Ω ² “ ” • ✓ ✗ △ ● ■".split(" ")) {
            assertTrue(measure.widthMm(sign, style) != style.sizeMm(), sign + " is not in the table");
        }
    }

    @Test
    void widthAddsUpAndGrowsWithSize() {
        TextStyle style = TextStyle.ofPt(10);
        double sum = measure.widthMm("6", style) + measure.widthMm(" ", style) + measure.widthMm("Fr", style);
        assertEquals(sum, measure.widthMm("6 Fr", style), 1e-12);
        assertEquals(2 * sum, measure.widthMm("6 Fr", style.sized(20)), 1e-12);
    }

    @Test
    void condensedIsNineTenths() {
        TextStyle style = TextStyle.ofPt(10);
        double share = measure.widthMm("Guide catheter", style.condensed()) / measure.widthMm("Guide catheter", style);
        assertEquals(0.9, share, 0.001);
    }

    @Test
    void characterWithoutEntryTakesOneEm() {
        TextStyle style = TextStyle.ofPt(10);
        assertEquals(style.sizeMm(), measure.widthMm("\u4E2D", style), 1e-12);
    }

    /** 1901 and 483 of 2048 units above and below the baseline, as seen in the font. */
    @ParameterizedTest
    @ValueSource(doubles = { 10, 20 })
    void heightsGrowWithTheSize(double sizePt) {
        TextStyle style = TextStyle.ofPt(sizePt);
        assertEquals(style.sizeMm() * 1901 / 2048, measure.ascentMm(style), 1e-9);
        assertEquals(style.sizeMm() * 483 / 2048, measure.descentMm(style), 1e-9);
    }

    @Test
    void heightsAreInOrder() {
        TextStyle style = TextStyle.ofPt(10);
        assertTrue(measure.descentMm(style) > 0);
        assertTrue(measure.capHeightMm(style) > measure.descentMm(style));
        assertTrue(measure.ascentMm(style) > measure.capHeightMm(style));
        assertEquals(measure.ascentMm(style) + measure.descentMm(style), measure.leadingMm(style), 1e-12);
    }
}
