/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;

import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.words.ReasonWords;

/** Exports a fit chart as one file of comma-separated values, if nothing else is asked with a row for each pair. */
public final class CsvChartExporter implements ChartExporter {
    private final CsvLayout layout;

    /** An exporter with a row for each pair. */
    public CsvChartExporter() {
        this(CsvLayout.PAIRS);
    }

    /** An exporter with that layout. */
    public CsvChartExporter(CsvLayout layout) {
        this.layout = layout;
    }

    @Override
    public String extension() {
        return "csv";
    }

    @Override
    public String label() {
        return layout == CsvLayout.PAIRS ? "Comma-separated values, a row for each pair"
                : "Comma-separated values, a row for each outer device";
    }

    @Override
    public List<ExportedFile> export(ChartContent content, String baseName, OffsetDateTime created)
            throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new CsvWriter(ReasonWords.english(content.units())).write(content, layout, bytes);
        return List.of(new ExportedFile(baseName + ".csv", bytes.toByteArray()));
    }
}
