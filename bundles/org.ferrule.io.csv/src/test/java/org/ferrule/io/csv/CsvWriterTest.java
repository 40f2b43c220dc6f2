/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.chart.page.Basis;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Head;
import org.ferrule.chart.page.Imprint;
import org.ferrule.chart.page.PaperFormat;
import org.ferrule.chart.page.ShownNumber;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class CsvWriterTest {
    private static final SourceRef SHEET = new SourceRef("Sheet, \"first\"", "B", "4");
    private static final UnitPreferences UNITS = UnitPreferences.in(LengthUnit.MILLIMETRE);

    private static Length mm(String value) {
        return Length.of(value, LengthUnit.MILLIMETRE);
    }

    private static PhaseAnswer phase(Verdict verdict, String worst) {
        Clearance clearance = new Clearance(mm(worst), mm("0.05"), mm("0.1"));
        Limiting limiting = new Limiting("working", mm("0"), Figure.exactly(mm("1.78")), SHEET, "balloon", mm("12"),
                Figure.exactly(mm("1.7")), SHEET);
        return new PhaseAnswer(verdict, Authority.GEOMETRY, verdict, Optional.of(clearance), Optional.of(limiting),
                Optional.of(mm("420.06")), List.of(Reason.of(ReasonCode.COLLAR_STEP)));
    }

    private static PhaseAnswer unknown() {
        return new PhaseAnswer(Verdict.UNKNOWN, Authority.GEOMETRY, Verdict.UNKNOWN, Optional.empty(),
                Optional.empty(), Optional.empty(),
                List.of(Reason.of(ReasonCode.LENGTH_NOT_STATED, Reason.name("c"))));
    }

    private static Head head(String id, String name) {
        return new Head(id, name, "kind", "6 Fr", "", "0.070 in", "");
    }

    private static ChartContent chart(String title, String outerName) {
        FitAnswer first = new FitAnswer(phase(Verdict.FITS, "0.00129"), phase(Verdict.TIGHT, "-0.0000001"));
        FitAnswer second = new FitAnswer(unknown(), unknown());
        return new ChartContent(new Imprint(title, "", "", "4", LocalDate.of(2026, 5, 11)),
                new Basis(new Edition("Rules", "1"), List.of(new Edition("Library", "2")), List.of("tip first")),
                List.of(head("a", outerName)),
                List.of(head("b", "Größe 2,5"), head("c", "third"), head("d", "fourth")),
                (row, column) -> column == 2 ? Optional.empty() : Optional.of(column == 0 ? first : second),
                List.of("invented"), UNITS, ShownNumber.WORST, new PaperFormat(PaperFormat.Size.A4, true));
    }

    private static String written(ChartContent chart, CsvLayout layout) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new CsvWriter(ReasonWords.english(UNITS)).write(chart, layout, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<CSVRecord> read(String csv) throws IOException {
        return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get().parse(new StringReader(csv))
                .getRecords();
    }

    @Test
    void writesARowForEveryPairThatWasAsked() throws IOException {
        List<CSVRecord> rows = read(written(chart("Chart", "Outer"), CsvLayout.PAIRS));
        assertEquals(2, rows.size());
        CSVRecord first = rows.get(0);
        assertEquals("fits", first.get("verdict"));
        assertEquals("tight", first.get("out verdict"));
        assertEquals("geometry", first.get("authority"));
        assertEquals("Größe 2,5", first.get("inner name"));
        assertEquals("balloon", first.get("limiting device section"));
        assertEquals("Sheet, \"first\", rev. B, p. 4", first.get("sources"));
        assertEquals("420.0", first.get("reach mm"));
        assertTrue(first.get("cautions").startsWith("The collar"), first.get("cautions"));
    }

    @Test
    void neverRoundsAClearanceUp() throws IOException {
        List<CSVRecord> rows = read(written(chart("Chart", "Outer"), CsvLayout.PAIRS));
        assertEquals("0.0012", rows.get(0).get("clearance worst mm"));
        assertEquals("0.0500", rows.get(0).get("clearance nominal mm"));
        assertEquals("-0.0001", CellText.clearance(Optional.of(mm("-0.000001"))));
    }

    @Test
    void leavesTheClearanceOfAnUnknownEmpty() throws IOException {
        CSVRecord second = read(written(chart("Chart", "Outer"), CsvLayout.PAIRS)).get(1);
        assertEquals("unknown", second.get("verdict"));
        assertEquals("", second.get("clearance worst mm"));
        assertEquals("third: the length that can be inserted is not stated", second.get("reasons"));
    }

    @Test
    void writesTheMatrixAsOnPaper() throws IOException {
        CSVRecord row = read(written(chart("Chart", "Outer"), CsvLayout.MATRIX)).get(0);
        assertEquals("0.070 in", row.get("figure"));
        assertEquals("fits 0.0012; out tight", row.get("Größe 2,5"));
        assertEquals("unknown", row.get("third"));
        assertEquals("", row.get("fourth"));
    }

    @ParameterizedTest
    @EnumSource(CsvLayout.class)
    void everyRowTellsOnWhatItRestsAndWarns(CsvLayout layout) throws IOException {
        for (CSVRecord row : read(written(chart("Chart", "Outer"), layout))) {
            assertEquals("Rules, rev. 1", row.get("rule set"));
            assertEquals("Library, rev. 2", row.get("libraries"));
            assertEquals("2026-05-11", row.get("date"));
            assertEquals("4", row.get("revision"));
            assertTrue(row.get("general caution").contains("instructions for use"));
        }
    }

    /** RFC 4180 section 2: CRLF, quotes doubled; and a first row of titles without comments before it. */
    @ParameterizedTest
    @EnumSource(CsvLayout.class)
    void isCleanRfc4180(CsvLayout layout) throws IOException {
        String csv = written(chart("Chart", "Outer"), layout);
        assertTrue(csv.startsWith("outer,outer name,"), csv.substring(0, 20));
        assertTrue(csv.endsWith("\r\n"));
        assertFalse(csv.replace("\r\n", "").contains("\n"));
        long columns = read(csv).stream().mapToInt(CSVRecord::size).distinct().count();
        assertEquals(1, columns);
    }

    /** CWE-1236: text must not be run as a formula by a spreadsheet. */
    @ParameterizedTest
    @ValueSource(strings = { "=1+1", "+1", "-x", "@SUM(A1)", "\tx" })
    void defusesTextThatASpreadsheetCouldRun(String text) throws IOException {
        assertEquals("'" + text, read(written(chart("Chart", text), CsvLayout.PAIRS)).get(0).get("outer name"));
        assertEquals("'" + text, read(written(chart(text, "Outer"), CsvLayout.MATRIX)).get(0).get("chart"));
    }

    @Test
    void leavesNegativeNumbersNumbers() {
        assertEquals("-0.3600", CellText.clearance(Optional.of(mm("-0.36"))));
        assertEquals("plain = text", CellText.text("plain = text"));
    }
}
