/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.GS;
import static org.ferrule.shelf.code.CodeTests.assertFault;
import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class Gs1ReaderTest {
    private static final String RAW = "0151022222233336" + "11141231" + "17150707" + "10A213B1" + GS + "211234";

    /** FDA, "UDI formats by FDA-accredited issuing agency", version 1.3, 27 January 2017: plain text example of GS1. */
    private static final ProductCode PUBLISHED = new ProductCode(Scheme.GS1, Optional.of("51022222233336"),
            Optional.of("A213B1"), Optional.of("1234"), Optional.of(LocalDate.of(2015, 7, 7)),
            Optional.of(LocalDate.of(2014, 12, 31)), Optional.empty(), Optional.empty(), List.of());

    @Test
    void readsThePublishedExample() {
        assertEquals(PUBLISHED, read("(01)51022222233336(11)141231(17)150707(10)A213B1(21)1234"));
        assertEquals(PUBLISHED, read("(01) 51022222233336 (11) 141231 (17)150707 (10)A213B1 (21) 1234"));
        assertEquals(PUBLISHED, read(RAW));
    }

    @ParameterizedTest
    @ValueSource(strings = { "]d2", "]C1", "]Q3", "]e0", "]J1", "\u001d", "]C1\u001d", "\u0002", "\ufeff ", "\r\n" })
    void leavesOutWhatScannersSendInFront(String prefix) {
        assertEquals(PUBLISHED, read(prefix + RAW));
    }

    @ParameterizedTest
    @ValueSource(strings = { "\r", "\r\n", "\t", "\u0003", " ", "\u001d", "\u001d\r\n" })
    void leavesOutWhatScannersSendBehind(String suffix) {
        assertEquals(PUBLISHED, read(RAW + suffix));
    }

    @ParameterizedTest
    @ValueSource(strings = { "^]", "<GS>", "<gs>", "{GS}", "[GS]", "\u241d", "\\x1D", "\\x1d", "<FNC1>", "{FNC1}" })
    void takesTheCommonSubstitutesForTheGroupSeparator(String substitute) {
        assertEquals(PUBLISHED, read(RAW.replace(GS, substitute)));
        assertEquals(PUBLISHED, read(substitute + RAW.replace(GS, substitute)));
    }

    @Test
    void takesASeparatorBehindAFixedLengthTooAndGoesOnWithTheNextIdentifier() {
        assertEquals(PUBLISHED, read("0151022222233336" + GS + "11141231" + GS + "17150707" + GS + "10A213B1" + GS
                + "211234"));
    }

    @Test
    void keepsWhatHasNoPlaceOfItsOwn() {
        ProductCode code = read(
                "(02)51022222233336(37)12(15)270131(20)01(22)AB(240)x/y(241)C-1(250)S2(710)1(716)z(30)5");
        assertEquals(List.of(new Element("02", "51022222233336"), new Element("37", "12"), new Element("15", "270131"),
                new Element("20", "01"), new Element("22", "AB"), new Element("240", "x/y"), new Element("241", "C-1"),
                new Element("250", "S2"), new Element("710", "1"), new Element("716", "z")), code.others());
        assertEquals(Optional.of(5), code.quantity());
        assertEquals(Optional.empty(), code.di());
    }

    @Test
    void takesBracketsWithoutAnIdentifierAsPartOfTheValue() {
        assertEquals(Optional.of("A(3)B()C(x1)"), read("(10)A(3)B()C(x1)(21)7").lot());
        assertEquals(Optional.of("A(12345)"), read("(10)A(12345)(21)7").lot());
        assertEquals(Optional.of("(1"), read("(10)(1").lot());
        assertEquals(Optional.of("A(123"), read("(10)A(123").lot());
    }

    @Test
    void refusesBracketsWithAnUnknownIdentifier() {
        CodeException e = assertFault(CodeFault.IDENTIFIER, 7, "(10)AB(99)1");
        assertTrue(e.getMessage().contains("(10)AB(99)1"), e.getMessage());
        assertFault(CodeFault.IDENTIFIER, 1, "(101)AB");
        assertFault(CodeFault.IDENTIFIER, 7, "(10)AB(8005)1");
        assertFault(CodeFault.IDENTIFIER, 1, "(1");
    }

    @ParameterizedTest
    @CsvSource({
        "0151022222233335,         CHECK,      15",
        "(01)51022222233335,       CHECK,      17",
        "(02)51022222233335,       CHECK,      17",
        "(17)151301,               DATE,       4",
        "(17)150230,               DATE,       4",
        "(17)150031,               DATE,       4",
        "(15)150230,               DATE,       4",
        "(11)150230,               DATE,       4",
        "17151301,                 CHECK,      7",
        "]d217151301,              DATE,       5",
        "(01)5102222223333,        LENGTH,     17",
        "(01)510222222333360,      LENGTH,     18",
        "015102222223333,          LENGTH,     15",
        "(17)1502,                 LENGTH,     8",
        "(10),                     LENGTH,     4",
        "(10)  (17)270131,         LENGTH,     6",
        "(30)123456789,            LENGTH,     12",
        "(30)12A,                  CHARACTER,  6",
        "(01)5102222223333A,       CHARACTER,  17",
        "(10)A B,                  CHARACTER,  5",
        "(10)A#B,                  CHARACTER,  5",
        "(10)Aä,                   CHARACTER,  5",
        "x(10)A,                   NO_CODE,    0",
        "9912,                     IDENTIFIER, 0",
        "0151022222233336991,      IDENTIFIER, 16",
        "10A^]99B,                 IDENTIFIER, 5",
        "10A^]^]17150707,          IDENTIFIER, 5",
        "(10)A(10)A,               DUPLICATE,  5",
        "(01)51022222233336(01)51022222233336, DUPLICATE, 18",
        "10123456789012345678901,  SEPARATOR,  22",
        "3012345678917150707,      SEPARATOR,  10",
        "]d3123,                   NO_CODE,    0",
        "]C00151022222233336,      NO_CODE,    0",
        "]d2+A123BJC5D6E71G,       IDENTIFIER, 3",
        "],                        EMPTY,      1",
        "]d2,                      EMPTY,      3" })
    void saysWhereAndWhatIsWrong(String text, CodeFault fault, int position) {
        assertFault(fault, position, text);
    }

    @Test
    void refusesNothingAtAll() {
        assertFault(CodeFault.EMPTY, 0, "");
        assertFault(CodeFault.EMPTY, 3, " \r\n");
        assertFault(CodeFault.IDENTIFIER, 1, GS);
    }

    @Test
    void countsPositionsInTheTextAsItWasGiven() {
        assertFault(CodeFault.DATE, 2 + 3 + 6 + 4 + 2, "\r\n]d2" + "10LOT1" + "<GS>" + "17151301");
        assertFault(CodeFault.SEPARATOR, 1 + 22, " 10123456789012345678901");
    }

    @Test
    void saysWhatAnIdentifierAllows() {
        assertEquals("a digit in (30)", assertFault(CodeFault.CHARACTER, 6, "(30)12A").expected());
        assertEquals("a letter, digit or one of !\"%&'()*+,-./:;<=>?_ in (10)",
                assertFault(CodeFault.CHARACTER, 5, "(10)A#B").expected());
        assertEquals("14 characters in (01)", assertFault(CodeFault.LENGTH, 17, "(01)5102222223333").expected());
        assertEquals("1 to 8 characters in (30)", assertFault(CodeFault.LENGTH, 12, "(30)123456789").expected());
    }

    @Test
    void leavesBlanksInMessagesAsTheyAre() {
        String message = assertFault(CodeFault.CHARACTER, 5, "(10)A B").getMessage();
        assertTrue(message.startsWith("\"(10)A B\", character 6"), message);
    }

    @Test
    void showsControlCharactersInMessages() {
        String message = assertFault(CodeFault.IDENTIFIER, 4, "10A" + GS + "99").getMessage();
        assertTrue(message.startsWith("\"10A\u241d99\", character 5: expected an application identifier"), message);
        assertTrue(assertFault(CodeFault.SEPARATOR, 22, "10123456789012345678901").expected()
                .contains("group separator"));
    }
}
