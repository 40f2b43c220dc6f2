/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.assertFault;
import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GtinTest {

    /** The first is the worked example of gs1.org, the others are from pages of its member organisations. */
    @ParameterizedTest
    @CsvSource({ "629104150021, 3", "501234567890, 0", "501234567421, 6", "890400021003, 7", "730001100001, 7",
        "4098765000022, 3" })
    void agreesWithPublishedCheckDigits(String digits, int check) {
        assertEquals(check, Gtin.checkDigit(digits));
    }

    @Test
    void hasACheckDigitForDigitsOnly() {
        assertThrows(IllegalArgumentException.class, () -> Gtin.checkDigit("62910A150021"));
        assertThrows(IllegalArgumentException.class, () -> Gtin.checkDigit(""));
        assertThrows(IllegalArgumentException.class, () -> Gtin.checkDigit("\u0661"));
    }

    @ParameterizedTest
    @CsvSource({ "6291041500213, 06291041500213", "51022222233336, 51022222233336",
        "' 6291041500213\r\n', 06291041500213",
        "96385074, 00000096385074", "614141000036, 00614141000036" })
    void isReadByItselfAsDeviceIdentifierOnly(String text, String di) {
        assertEquals(new ProductCode(Scheme.GS1, Optional.of(di), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of()), read(text));
    }

    @Test
    void isReadBehindTheSymbologyOfArticleNumbers() {
        assertEquals(Optional.of("06291041500213"), read("]E06291041500213").di());
        assertFault(CodeFault.NO_CODE, 0, "]E062910415002");
    }

    /** 17261231 is no expiry, 10123456789012 no lot: bare digits are a GTIN or wrong. */
    @ParameterizedTest
    @ValueSource(strings = { "6291041500214", "17261231", "10123456789012" })
    void isNeverTakenForAnElementString(String text) {
        assertFault(CodeFault.CHECK, text.length() - 1, text);
    }
}
