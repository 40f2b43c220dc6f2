/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;

import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.ChartPages;

/** Exports a fit chart as one PDF document. */
public final class PdfChartExporter implements ChartExporter {

    @Override
    public String extension() {
        return "pdf";
    }

    @Override
    public String label() {
        return "PDF document";
    }

    @Override
    public List<ExportedFile> export(ChartContent content, String baseName, OffsetDateTime created)
            throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        new PdfWriter().write(ChartPages.of(content, created), bytes);
        return List.of(new ExportedFile(baseName + ".pdf", bytes.toByteArray()));
    }
}
