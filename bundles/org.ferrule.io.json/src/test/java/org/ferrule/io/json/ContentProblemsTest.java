/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.check.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with the content is found at its line and column; the document opens nevertheless. */
class ContentProblemsTest {

    /** A text in a device, the column of the problem (the text's quote stands in column 13), its length and code. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "0.014"               | 19 | 0 | UNREADABLE_FIGURE
            "1,02 mm"             | 15 | 0 | UNREADABLE_FIGURE
            "21 G"                | 17 | 0 | UNREADABLE_FIGURE
            ""                    | 14 | 0 | UNREADABLE_FIGURE
            "\\u0030.014"         | 24 | 0 | UNREADABLE_FIGURE
            "0.014 mm"            | 14 | 5 | DOUBTFUL_FIGURE
            "\\u0030.014 mm"      | 14 | 10 | DOUBTFUL_FIGURE
            """)
    void pointsIntoADimension(String json, int column, int length, String code) {
        ReadResult result = Samples
                .deviceWith("\n\"takesWire\":" + json + ",\"source\":\"s\"}],\"sources\":[{\"id\":\"s\"");
        assertFalse(result.broken());
        DocumentProblem problem = result.problems().get(0);
        assertEquals(code + " 2:" + column + " " + length, problem.code() + " " + problem.line() + ":"
                + problem.column() + " " + problem.region().length(), problem.text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "source":"x"              | UNKNOWN_REFERENCE 2:10
            "line":"x"                | UNKNOWN_REFERENCE 2:8
            "claims":[{}]             | MISSING_VALUE 2:11
            "takesWire":"0.014 in"    | MISSING_SOURCE 1:52
            "balloon":{"section":"x"} | UNKNOWN_REFERENCE 2:22
            """)
    void pointsAtTheValueOrTheObject(String keys, String expected) {
        DocumentProblem problem = Samples.deviceWith("\n" + keys).problems().get(0);
        assertEquals(expected, problem.code() + " " + problem.line() + ":" + problem.column());
    }

    @Test
    void pointsAtOneOfManyValues() {
        DocumentProblem problem = Samples.read("""
                {"format":"ferrule.chart","version":1,"libraries":["a.devices.json",
                  "b.json"],"rules":"r.rules.json","outer":{},"inner":{}}
                """, "x.chart.json").problems().get(0);
        assertEquals("BAD_PATH 2:3", problem.code() + " " + problem.line() + ":" + problem.column());
    }

    @Test
    void namesTheObjectAndTheFeature() {
        ReadResult result = Samples.deviceWith("\"line\":\"x\"");
        DocumentProblem problem = result.problems().get(0);
        assertSame(((DeviceLibrary) result.document().orElseThrow()).getDevices().get(0),
                problem.subject().orElseThrow());
        assertSame(Literals.DEVICE__LINE, problem.feature().orElseThrow());
    }

    @Test
    void keepsATextThatIsNoDimension() {
        ReadResult result = Samples.deviceWith("\"takesWire\":\"0.014 inchz\"");
        assertTrue(result.hasErrors());
        assertTrue(Samples.written(result).contains("\"takesWire\": \"0.014 inchz\""));
    }

    @Test
    void ordersProblemsByTheirPlaces() {
        ReadResult result = Samples.libraryWith("\"date\":\"x\",\"devices\":[{\"line\":\"l\",\"id\":\"d\",\"z\":1}]");
        assertEquals("[BAD_DATE, UNKNOWN_REFERENCE, UNKNOWN_KEY]",
                result.problems().stream().map(DocumentProblem::code).toList().toString());
        assertEquals(Severity.WARNING, result.problems().get(0).severity());
    }

    @Test
    void findsNothingWrongWithAGoodDocument() {
        assertEquals(3, Samples.library(Samples.LIBRARY).problems().stream()
                .filter(p -> p.severity() == Severity.INFO && p.code().equals("UNKNOWN_KEY")).count());
        assertEquals(3, Samples.library(Samples.LIBRARY).problems().size());
    }
}
