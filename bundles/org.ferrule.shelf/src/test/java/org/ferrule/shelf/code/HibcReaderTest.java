/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import static org.ferrule.shelf.code.CodeTests.assertFault;
import static org.ferrule.shelf.code.CodeTests.read;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HibcReaderTest {

    private static String checked(String data) {
        return data + Mod43.checkCharacter(data);
    }

    /** Figures and examples of ANSI/HIBC 2.6-2016, as public encoders quote them in their tests. */
    @ParameterizedTest
    @CsvSource({ "+A123BJC5D6E71, G", "+$$52001510X3G, D", "+A99912345/$$52001510X3, 3",
        "+A123BJC5D6E71/$$52001510X3, C",
        "+A99912345/$$52001510X3/16D20111212/S77DEFG45, 7", "+A99912345/$10X3/16D20111231/14D20200131, 3",
        "+A99912349/$10X3/16D20111231/14D20200131/Q500, Z" })
    void agreesWithPublishedCheckCharacters(String data, char check) {
        assertEquals(check, Mod43.checkCharacter(data));
        assertEquals(Scheme.HIBC, read(data + check).scheme());
    }

    /** ANSI/HIBC 2.6-2016, sections 2.3.2 and 2.3.2.4, as above. */
    @Test
    void readsTheExamplesOfTheStandard() {
        assertEquals(new ProductCode(Scheme.HIBC, Optional.of("A99912345"), Optional.of("10X3"),
                Optional.of("77DEFG45"), Optional.of(LocalDate.of(2020, 1, 15)),
                Optional.of(LocalDate.of(2011, 12, 12)),
                Optional.empty(), Optional.empty(), List.of()),
                read("+A99912345/$$52001510X3/16D20111212/S77DEFG457"));
        assertEquals(new ProductCode(Scheme.HIBC, Optional.of("A99912349"), Optional.of("10X3"), Optional.empty(),
                Optional.of(LocalDate.of(2020, 1, 31)), Optional.of(LocalDate.of(2011, 12, 31)), Optional.of(500),
                Optional.empty(), List.of()), read("+A99912349/$10X3/16D20111231/14D20200131/Q500Z"));
    }

    /**
     * HL7 FHIR release 3, example of a device with an HIBC identifier. Its last character, C, is a place holder: the
     * check character is computed.
     */
    @Test
    void readsTheExampleOfFhir() {
        String data = "+H123PARTNO1234567890120/$$420020216LOT123456789012345/SXYZ456789012345678/16D20130202";
        ProductCode code = read(checked(data));
        assertEquals(Optional.of("H123PARTNO1234567890120"), code.di());
        assertEquals(Optional.of("LOT123456789012345"), code.lot());
        assertEquals(Optional.of("XYZ456789012345678"), code.serial());
        assertEquals(Optional.of(LocalDate.of(2020, 2, 2)), code.expiry());
        assertEquals(Optional.of(LocalDate.of(2013, 2, 2)), code.made());
        assertEquals(List.of(new Element("expiryHour", "16")), code.others());
        assertFault(CodeFault.CHECK, data.length(), data + "C");
    }

    /** The forms of the secondary code for 28 September 2005, lot 3C001 (ANSI/HIBC, table of formats, from memory). */
    @ParameterizedTest
    @CsvSource({
        "05271,                2005-09-28, ,      ,",
        "052713C001,           2005-09-28, 3C001, ,",
        "$3C001,               ,           3C001, ,",
        "$$09053C001,          2005-09-30, 3C001, ,",
        "$$12053C001,          2005-12-31, 3C001, ,",
        "$$0905,               2005-09-30, ,      ,",
        "$$20928053C001,       2005-09-28, 3C001, ,",
        "$$30509283C001,       2005-09-28, 3C001, ,",
        "$$4050928223C001,     2005-09-28, 3C001, ,",
        "$$5052713C001,        2005-09-28, 3C001, ,",
        "$$605271223C001,      2005-09-28, 3C001, ,",
        "$$73C001,             ,           3C001, ,",
        "$$82409053C001,       2005-09-30, 3C001, 24,",
        "$$82420928053C001,    2005-09-28, 3C001, 24,",
        "$$82430509283C001,    2005-09-28, 3C001, 24,",
        "$$8244050928223C001,  2005-09-28, 3C001, 24,",
        "$$8245052713C001,     2005-09-28, 3C001, 24,",
        "$$824605271223C001,   2005-09-28, 3C001, 24,",
        "$$82473C001,          ,           3C001, 24,",
        "$$824,                ,           ,      24,",
        "$$90010009053C001,    2005-09-30, 3C001, 100,",
        "$$9001005052713C001,  2005-09-28, 3C001, 100,",
        "$$900100,             ,           ,      100,",
        "$+0001,               ,           ,      ,    0001",
        "$$+09050001,          2005-09-30, ,      ,    0001",
        "$$+20928050001,       2005-09-28, ,      ,    0001",
        "$$+5052710001,        2005-09-28, ,      ,    0001",
        "$$+70001,             ,           ,      ,    0001",
        "$3C001/S0001,         ,           3C001, ,    0001",
        "$3C001/$+0001,        ,           3C001, ,    0001" })
    void readsEveryFormOfTheSecondaryCode(String data, LocalDate expiry, String lot, Integer quantity, String serial) {
        for (char link : Mod43.ALPHABET.toCharArray()) {
            ProductCode alone = read(checked("+" + data + link).replaceFirst(" $", "_"));
            assertEquals(Optional.of(link), alone.link());
            assertSecondary(alone, expiry, lot, quantity, serial);
        }
        ProductCode both = read(checked("+A123BJC5D6E71/" + data));
        assertEquals(Optional.of("A123BJC5D6E71"), both.di());
        assertSecondary(both, expiry, lot, quantity, serial);
    }

    private static void assertSecondary(ProductCode code, LocalDate expiry, String lot, Integer quantity,
            String serial) {
        assertEquals(Optional.ofNullable(expiry), code.expiry());
        assertEquals(Optional.ofNullable(lot), code.lot());
        assertEquals(Optional.ofNullable(quantity), code.quantity());
        assertEquals(Optional.ofNullable(serial), code.serial());
    }

    @ParameterizedTest
    @ValueSource(strings = { "]C0", "]A0", "]d1", "]Q1", "\u0002", " ", "" })
    void leavesOutWhatScannersAdd(String prefix) {
        assertEquals(Optional.of("A123BJC5D6E71"), read(prefix + "+A123BJC5D6E71G\r\n").di());
    }

    @Test
    void readsWhatIsPrintedBetweenAsterisksAndLowerCase() {
        assertEquals(read("+A123BJC5D6E71G"), read("*+A123BJC5D6E71G*"));
        assertEquals(read("+A123BJC5D6E71G"), read("+a123bjc5d6e71g"));
        assertEquals(Optional.of("Z123AZ1"), read(checked("+Z123AZ1").toLowerCase(Locale.ROOT)).di());
        assertFault(CodeFault.CHARACTER, 16, "*+A123BJC5D6E71G");
        assertFault(CodeFault.CHARACTER, 1, "*A123BJC5D6E71G*");
        assertFault(CodeFault.CHARACTER, 1, "*");
        assertFault(CodeFault.CHARACTER, 1, "**");
    }

    @Test
    void readsACheckCharacterThatIsABlank() {
        String data = "+A123BJC00000000O1";
        assertEquals(' ', Mod43.checkCharacter(data));
        for (String text : List.of(data + " ", data + "_", "*" + data + "_*", data + " \r\n")) {
            assertEquals(Optional.of("A123BJC00000000O1"), read(text).di());
            assertEquals(Optional.of(' '), read(text).link());
        }
        assertFault(CodeFault.CHECK, 17, data);
    }

    @Test
    void leavesOutABlankBehindTheCheckCharacter() {
        assertEquals(Optional.of("A123BJC5D6E71"), read("+A123BJC5D6E71G ").di());
    }

    @Test
    void readsALinkCharacterAndACheckCharacterThatAreBlanks() {
        String data = withCheck(' ', x -> "+$3C00" + x + " ");
        assertEquals(Optional.of(' '), read(data + " ").link());
        assertEquals(read(data + "_"), read(data + " "));
    }

    /** The check character belongs to the code as a whole: no piece of it goes on with it. */
    @Test
    void takesNoCheckCharacterForDataInFrontOfIt() {
        String slash = withCheck('7', x -> "+A123BJC5D6" + x + "1/");
        assertFault(CodeFault.IDENTIFIER, slash.length(), slash + '7');
        String dollar = withCheck('$', x -> "+A123BJC5D6" + x + "1/$");
        assertFault(CodeFault.LENGTH, dollar.length(), dollar + '$');
    }

    @Test
    void countsPositionsOverABlankThatIsTheCheckCharacter() {
        String data = withCheck(' ', x -> "+A123BJC5D6" + x + "1/$");
        assertFault(CodeFault.LENGTH, data.length(), data + " ");
    }

    /** A text that a letter or digit completes so that it has the check character. */
    private static String withCheck(char check, UnaryOperator<String> text) {
        return Mod43.ALPHABET.substring(0, 36).chars().mapToObj(x -> text.apply(String.valueOf((char) x)))
                .filter(data -> Mod43.checkCharacter(data) == check).findFirst().orElseThrow();
    }

    @Test
    void refusesABlankThatCanBeBoth() {
        String alone = alsoCheckedWithBlank("+$3C001");
        CodeException e = assertFault(CodeFault.AMBIGUOUS, alone.length(), alone + " ");
        assertEquals(alone + " ", e.text());
        assertEquals(Scheme.HIBC, read(alone).scheme());
    }

    /** A text that ends with its check character, behind which a blank would be one too. */
    private static String alsoCheckedWithBlank(String data) {
        for (char one : Mod43.ALPHABET.substring(0, 36).toCharArray()) {
            for (char link : Mod43.ALPHABET.toCharArray()) {
                String text = checked(data + one + link);
                if (Mod43.checkCharacter(text) == ' ') {
                    return text;
                }
            }
        }
        throw new AssertionError("no such text");
    }

    @ParameterizedTest
    @CsvSource({
        "+A123BJC5D6E71,            CHECK,      13",
        "+A123BJC5D6E7#1,           CHARACTER,  13",
        "+A1,                       CHECK,      2",
        "+A,                        LENGTH,     2" })
    void saysWhereTheTextIsWrong(String text, CodeFault fault, int position) {
        assertFault(fault, position, text);
    }

    @ParameterizedTest
    @CsvSource({
        "+A1234,                     LENGTH,     6",
        "+A123BJC5D6E789012345678,   ,           ",
        "+A123BJC5D6E7890123456789,  LENGTH,     25",
        "+A123BJC5D6EX,              CHARACTER,  12",
        "+A1.3BJC5D6E1,              CHARACTER,  3",
        "+A123BJC5D6E71/,            IDENTIFIER, 15",
        "+A123BJC5D6E71/X1,          IDENTIFIER, 15",
        "+A123BJC5D6E71/$A/X1,       IDENTIFIER, 18",
        "+A123BJC5D6E71/$A/,         IDENTIFIER, 18",
        "+A123BJC5D6E71/$,           LENGTH,     16",
        "+A123BJC5D6E71/$A+B,        CHARACTER,  17",
        "+A123BJC5D6E71/$123456789012345678,  ,  ",
        "+A123BJC5D6E71/$1234567890123456789, LENGTH, 34",
        "+A123BJC5D6E71/$$,          IDENTIFIER, 17",
        "+A123BJC5D6E71/$$A,         IDENTIFIER, 17",
        "+A123BJC5D6E71/$$+8241,     IDENTIFIER, 18",
        "+A123BJC5D6E71/$$1305A,     DATE,       17",
        "+A123BJC5D6E71/$$0005A,     DATE,       17",
        "+A123BJC5D6E71/$$20230005A, DATE,       18",
        "+A123BJC5D6E71/$$505366A,   DATE,       18",
        "+A123BJC5D6E71/$$504366A,   ,           ",
        "+A123BJC5D6E71/$$505000A,   DATE,       18",
        "+A123BJC5D6E71/$$405092824, DATE,       24",
        "+A123BJC5D6E71/$$405092823, ,           ",
        "+A123BJC5D6E71/$$40509282X, CHARACTER,  25",
        "+A123BJC5D6E71/$A/Q123456789, ,         ",
        "+A123BJC5D6E71/$$40509282,  LENGTH,     25",
        "+A123BJC5D6E71/$$090A,      CHARACTER,  20",
        "+A123BJC5D6E71/$$090,       LENGTH,     20",
        "+A123BJC5D6E71/$$82,        LENGTH,     19",
        "+A123BJC5D6E71/$$8A4,       CHARACTER,  18",
        "+A123BJC5D6E71/$$824A,      IDENTIFIER, 20",
        "+A123BJC5D6E71/$$90010,     LENGTH,     22",
        "+A123BJC5D6E71/$A/$B,       DUPLICATE,  19",
        "+A123BJC5D6E71/$$0905/14D20050930, DUPLICATE, 22",
        "+A123BJC5D6E71/$$824/Q24,   DUPLICATE,  22",
        "+A123BJC5D6E71/$A/16D20111,     LENGTH, 26",
        "+A123BJC5D6E71/$A/16D20111231X, LENGTH, 29",
        "+A123BJC5D6E71/$A/14D20111231X, LENGTH, 29",
        "+A123BJC5D6E71/$A/16D20111331,  DATE,   21",
        "+A123BJC5D6E71/$A/S,        LENGTH,     19",
        "+A123BJC5D6E71/$A/Q,        LENGTH,     19",
        "+A123BJC5D6E71/$A/Q1234567890,  LENGTH, 29",
        "+/EU720060FF0,              IDENTIFIER, 1",
        "+$,                         LENGTH,     3",
        "+$X,                        LENGTH,     2" })
    void saysWhereTheDataAreWrong(String data, CodeFault fault, Integer position) {
        if (fault == null) {
            assertEquals(Scheme.HIBC, read(checked(data)).scheme());
        } else {
            assertFault(fault, position, checked(data));
        }
    }
}
