/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;

import org.ferrule.model.check.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingProblemsTest {

    private static final String OPEN = "{\"format\":\"ferrule.devices\",\"version\":1,";

    /** Text, line, column, code. Strictness after RFC 8259: no comments, no trailing commas, one value. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {}                                             | 1 | 1  | MISSING_FORMAT
            {"version":1}                                  | 1 | 1  | MISSING_FORMAT
            {"format":"ferrule.devices"}                   | 1 | 1  | MISSING_VERSION
            {"format":"ferrule.device","version":1}        | 1 | 11 | UNKNOWN_FORMAT
            {"format":"ferrule.rules","version":1}         | 1 | 11 | FORMAT_AND_NAME
            {"format":7,"version":1}                       | 1 | 11 | WRONG_TYPE
            {"format":"ferrule.devices","version":"1"}     | 1 | 39 | BAD_VERSION
            {"format":"ferrule.devices","version":0}       | 1 | 39 | BAD_VERSION
            {"format":"ferrule.devices","version":1.0}     | 1 | 39 | BAD_VERSION
            []                                             | 1 | 1  | NOT_AN_OBJECT
            "text"                                         | 1 | 1  | NOT_AN_OBJECT
            ``                                             | 1 | 1  | SYNTAX
            {"format":"ferrule.devices","version":1} x     | 1 | 42 | SYNTAX
            {"format":"ferrule.devices","version":1}{}     | 1 | 41 | SYNTAX
            {"format":"ferrule.devices","version":1,}      | 1 | 41 | SYNTAX
            {"format":"ferrule.devices",~  "version":01}   | 2 | 13 | SYNTAX
            {"format":"ferrule.devices",~  // no~}         | 2 | 3  | SYNTAX
            {"format":"ferrule.devices",~  'version':1}    | 2 | 3  | SYNTAX
            {"format":"ferrule.devices",~  "version":NaN}  | 2 | 13 | SYNTAX
            {"format":"ferrule.devices",~  "version":nul}  | 2 | 13 | SYNTAX
            {"format":"ferrule.devices",~  "version":trux,1} | 2 | 13 | SYNTAX
            {"format":"ferrule.devices"                    | 1 | 28 | SYNTAX
            """)
    void breaksOnWhatIsNoDocument(String text, int line, int column, FormatCode code) {
        assertBroken(Samples.library(text.replace('~', '\n')), line, column, code);
    }

    /** Keys after the header in a second line, column in it, code. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "title":7                                | 9  | WRONG_TYPE
            "title":null                             | 9  | WRONG_TYPE
            "title":["a"]                            | 9  | WRONG_TYPE
            "devices":{}                             | 11 | WRONG_TYPE
            "devices":[7]                            | 12 | WRONG_TYPE
            "devices":[{"balloon":[]}]               | 23 | WRONG_TYPE
            "devices":[{"effectiveLength":150}]      | 31 | WRONG_TYPE
            "devices":[{"kind":"guide cathter"}]     | 20 | UNKNOWN_WORD
            "devices":[{"kind":true}]                | 20 | WRONG_TYPE
            "devices":[{"sections":[{"rigid":"x"}]}] | 34 | WRONG_TYPE
            "devices":[{"sections":[{"rigid":null}]}] | 34 | WRONG_TYPE
            "devices":[{"claims":[{"covers":"in"}]}] | 33 | WRONG_TYPE
            "devices":[{"claims":[{"covers":["up"]}]}] | 34 | UNKNOWN_WORD
            "bench":[{"samples":1.5}]                | 21 | BAD_NUMBER
            "bench":[{"samples":1e1}]                | 21 | BAD_NUMBER
            "bench":[{"samples":3000000000}]         | 21 | BAD_NUMBER
            "bench":[{"samples":"3"}]                | 21 | WRONG_TYPE
            "title":"a","title":"b"                  | 13 | DUPLICATE_KEY
            "devices":[{"id":"a","id":"a"}]          | 22 | DUPLICATE_KEY
            "x":{"y":1,"y":2}                        | 12 | DUPLICATE_KEY
            """)
    void breaksOnWhatContradictsTheFormat(String keys, int column, FormatCode code) {
        assertBroken(Samples.library(OPEN + "\n" + keys + "}"), 2, column, code);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"a":NaN}    | Non-standard token 'NaN'
            {"a":nul}    | Unrecognized token 'nul': was expecting (JSON String, Number, Array, \
            Object or token 'null', 'true' or 'false')
            {// no       | Unexpected character ('/'): maybe a (non-standard) comment?
            {"a" 1}      | Unexpected character ('1'): was expecting a colon to separate field name and value
            """)
    void saysWhatIsWrongWithTheSyntax(String text, String message) {
        assertEquals(message, Samples.library(text).problems().get(0).text());
    }

    @ParameterizedTest
    @CsvSource({ "1e999999999", "1e-999999999", "1e101" })
    void refusesNumbersBeyondReason(String number) {
        assertBroken(Samples.rulesWith("\n\"coverage\":" + number), 2, 12, FormatCode.BAD_NUMBER);
    }

    @Test
    void refusesNestingBeyondReason() {
        assertEquals("SYNTAX", Samples.libraryWith("\"x\":" + "[".repeat(5000) + "]".repeat(5000)).problems().get(0)
                .code());
    }

    @Test
    void suggestsTheNearestWord() {
        DocumentProblem problem = Samples.libraryWith("\"devices\":[{\"kind\":\"Guide cathter\"}]").problems().get(0);
        assertEquals("\"guide catheter\"", problem.suggestion());
        assertTrue(problem.text().contains("did you mean \"guide catheter\"?"), problem.text());
        assertTrue(problem.expected().contains("\"haemostasis valve\""), problem.expected());
    }

    @Test
    void saysWhatWasFoundAndWhatWasExpected() {
        assertEquals("found the number 150; expected a text with its unit, such as \"1.78 mm\"",
                Samples.deviceWith("\"effectiveLength\":150").problems().get(0).text());
    }

    @Test
    void findsEveryProblemInOneGo() {
        assertEquals(3, Samples.libraryWith("\"title\":1,\"revision\":2,\"date\":3").problems().size());
    }

    @Test
    void warnsOfKeysThatLookLikeSlips() {
        DocumentProblem slip = Samples.deviceWith("\"efectiveLength\":\"150 cm\"").problems().get(0);
        assertEquals(Severity.WARNING, slip.severity());
        assertEquals("\"effectiveLength\"", slip.suggestion());
        assertEquals(Severity.INFO, Samples.deviceWith("\"shade\":\"blue\"").problems().get(0).severity());
    }

    @Test
    void namesTheFirstByteThatIsNotUtf8() {
        byte[] bytes = "{\n \"a\": \"\u00FC\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertBroken(new JsonDocuments().read(bytes, "x.devices.json"), 2, 8, FormatCode.NOT_UTF_8);
    }

    /** RFC 8259, section 8.1: a parser may ignore a byte order mark; columns do not count it. */
    @Test
    void passesOverAByteOrderMark() {
        assertFalse(Samples.library("\uFEFF" + Samples.LIBRARY).broken());
        assertBroken(Samples.library("\uFEFF[]"), 1, 1, FormatCode.NOT_AN_OBJECT);
    }

    @Test
    void opensANewerVersionReadOnly() {
        ReadResult result = Samples.library(
                "{\"format\":\"ferrule.devices\",\"version\":2,\"devices\":[{\"id\":\"d\",\"kind\":\"new kind\"}]}");
        assertTrue(result.readOnly());
        assertFalse(result.broken());
        assertEquals("NEWER_VERSION", result.problems().get(0).code());
        assertTrue(result.problems().stream().anyMatch(p -> p.code().equals("UNKNOWN_WORD")
                && p.severity() == Severity.WARNING));
    }

    @Test
    void doesNotInsistOnAFileName() {
        assertTrue(Samples.read(Samples.LIBRARY, "").problems().stream().noneMatch(p -> p.code().equals("FILE_NAME")));
        assertEquals("FILE_NAME", Samples.read(Samples.LIBRARY, "copy.json").problems().get(0).code());
    }

    @Test
    void namesEveryProblemOfABrokenDocument() {
        ReadResult result = Samples.libraryWith("\n\"title\":1,\n\"date\":2");
        BrokenDocumentException e = assertThrows(BrokenDocumentException.class, result::requireDocument);
        assertEquals("2:9: found the number 1; expected a text\n3:8: found the number 2; expected a text",
                e.getMessage());
    }

    private static void assertBroken(ReadResult result, int line, int column, FormatCode code) {
        assertTrue(result.broken());
        DocumentProblem problem = result.problems().stream().filter(p -> p.severity() == Severity.ERROR).findFirst()
                .orElseThrow();
        assertEquals(code.name() + " " + line + ":" + column, problem.code() + " " + problem.line() + ":"
                + problem.column(), problem.text());
    }
}
