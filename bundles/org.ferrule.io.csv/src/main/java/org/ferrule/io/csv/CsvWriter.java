/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.Head;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.verdict.Lane;
import org.ferrule.fit.verdict.ReasonCode.Weight;

/**
 * Writes a chart as comma-separated values: RFC 4180 with CRLF, UTF-8 without a byte order mark, one row of titles, no
 * comment lines. Numbers are in millimetres with a decimal point; clearances are rounded down. Text that a spreadsheet
 * could take for a formula begins with an apostrophe. Rule set, chart, revision, date and caution stand in the last
 * columns of every row.
 */
public final class CsvWriter {
    private static final List<String> CLOSING_TITLES = List.of("rule set", "libraries", "conditions", "chart",
            "revision", "date", "footnotes", "general caution");

    private final ReasonWords words;

    /** A writer that says reasons with these words. */
    public CsvWriter(ReasonWords words) {
        this.words = words;
    }

    /**
     * Writes a chart. The stream is flushed and left open.
     *
     * @throws IOException if the stream fails
     */
    public void write(ChartContent chart, CsvLayout layout, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        write(chart, layout, writer);
        writer.flush();
    }

    /**
     * Writes a chart.
     *
     * @throws IOException if the target fails
     */
    public void write(ChartContent chart, CsvLayout layout, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180);
        if (layout == CsvLayout.PAIRS) {
            writePairs(chart, printer);
        } else {
            writeMatrix(chart, printer);
        }
        printer.flush();
    }

    private void writePairs(ChartContent chart, CSVPrinter printer) throws IOException {
        List<Column> columns = columns();
        List<String> titles = new ArrayList<>(columns.stream().map(Column::title).toList());
        titles.addAll(CLOSING_TITLES);
        printer.printRecord(titles);
        List<String> closing = closing(chart);
        for (int row = 0; row < chart.rows().size(); row++) {
            for (int column = 0; column < chart.columns().size(); column++) {
                Optional<FitAnswer> answer = chart.answers().at(row, column);
                if (answer.isPresent()) {
                    Pair pair = new Pair(chart.rows().get(row), chart.columns().get(column), answer.get(),
                            chart.names(row, column), words);
                    List<String> values = new ArrayList<>(columns.stream().map(c -> c.value().apply(pair)).toList());
                    values.addAll(closing);
                    printer.printRecord(values);
                }
            }
        }
    }

    private static List<Column> columns() {
        return List.of(Column.text("outer", p -> p.outer().id()), Column.text("outer name", p -> p.outer().title()),
                Column.text("lumen", p -> p.outer().lumen()), Column.text("inner", p -> p.inner().id()),
                Column.text("inner name", p -> p.inner().title()),
                Column.text("verdict", p -> p.verdict(FitAnswer::in)),
                Column.text("authority", p -> p.answer().in().authority().word()),
                Column.text("geometry", p -> p.answer().in().geometry().word()),
                Column.number("clearance worst mm", p -> CellText.clearance(p.clearance(Lane.WORST))),
                Column.number("clearance nominal mm", p -> CellText.clearance(p.clearance(Lane.NOMINAL))),
                Column.number("clearance best mm", p -> CellText.clearance(p.clearance(Lane.BEST))),
                Column.text("limiting device section", p -> p.limiting(Limiting::deviceSection)),
                Column.text("limiting lumen section", p -> p.limiting(Limiting::lumenSection)),
                Column.number("reach mm", p -> CellText.distance(p.answer().in().reach())),
                Column.text("out verdict", p -> p.verdict(FitAnswer::out)),
                Column.text("reasons", p -> p.reasons(FitAnswer::in, Weight.DECIDES)),
                Column.text("out reasons", p -> p.reasons(FitAnswer::out, Weight.DECIDES)),
                Column.text("conflicts", p -> p.reasons(Weight.CONFLICT)),
                Column.text("cautions", p -> p.reasons(Weight.CAUTION)),
                Column.text("assumed", p -> p.reasons(Weight.NOTE)), Column.text("sources", Pair::sources));
    }

    private void writeMatrix(ChartContent chart, CSVPrinter printer) throws IOException {
        List<String> titles = new ArrayList<>(List.of("outer", "outer name", "size", "lumen", "figure"));
        chart.columns().forEach(head -> titles.add(CellText.text(head.title())));
        titles.addAll(CLOSING_TITLES);
        printer.printRecord(titles);
        List<String> closing = closing(chart);
        for (int row = 0; row < chart.rows().size(); row++) {
            Head head = chart.rows().get(row);
            List<String> values = new ArrayList<>();
            List.of(head.id(), head.title(), head.size(), head.lumen(), head.figure())
                    .forEach(text -> values.add(CellText.text(text)));
            for (int column = 0; column < chart.columns().size(); column++) {
                values.add(chart.answers().cell(row, column).map(cell -> matrixCell(cell, chart)).orElse(""));
            }
            values.addAll(closing);
            printer.printRecord(values);
        }
    }

    /** Verdict, the clearance that the chart shows, and the verdict coming out where it is worse. */
    private static String matrixCell(FitCell cell, ChartContent chart) {
        StringBuilder text = new StringBuilder(VerdictLook.of(cell.in()).word());
        chart.number().of(cell).ifPresent(c -> text.append(' ').append(CellText.clearance(Optional.of(c))));
        VerdictLook.worseOut(cell).ifPresent(out -> text.append("; out ").append(out.word()));
        return text.toString();
    }

    private List<String> closing(ChartContent chart) {
        String libraries = String.join("; ", chart.basis().libraries().stream().map(this::edition).toList());
        return List.of(edition(chart.basis().rules()), libraries, String.join("; ", chart.basis().conditions()),
                chart.imprint().title(), chart.imprint().revision(), chart.imprint().date().toString(),
                String.join("; ", chart.footnotes()), words.phrases().get("page.caution")).stream().map(CellText::text)
                .toList();
    }

    private String edition(Edition edition) {
        return edition.revision().isBlank() ? edition.title()
                : words.phrases().fill("page.edition", edition.title(), edition.revision());
    }
}
