/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.MissingResourceException;

import org.junit.jupiter.api.Test;

class PhrasesTest {
    private final Phrases phrases = Phrases.english();

    @Test
    void fillsItsPlaces() {
        assertEquals("0.12 mm / 4.7 thou", phrases.fill("clearance.both", "0.12", "4.7"));
        assertEquals("{0} mm / {1} thou", phrases.get("clearance.both"));
    }

    /** Names come from documents and may hold anything. */
    @Test
    void whatValuesSayIsNoPlace() {
        assertEquals("{1} mm / {0} thou", phrases.fill("clearance.both", "{1}", "{0}"));
        assertEquals("a $1\\ lumen", phrases.fill("bore.named", "a $1\\"));
    }

    @Test
    void placeWithoutAValueStays() {
        assertEquals("1 mm / {1} thou", phrases.fill("clearance.both", "1"));
    }

    @Test
    void phraseThatIsNotThereIsNamed() {
        assertTrue(phrases.find("no.such").isEmpty());
        assertTrue(assertThrows(MissingResourceException.class, () -> phrases.get("no.such")).getMessage()
                .contains("no.such"));
    }
}
