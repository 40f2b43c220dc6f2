/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.export.ChartExporter;
import org.ferrule.chart.export.ExportedFile;
import org.ferrule.chart.page.ChartContent;
import org.ferrule.chart.page.ChartPages;
import org.ferrule.picture.Picture;

/** Exports a fit chart as SVG pictures, one file a page. */
public final class SvgChartExporter implements ChartExporter {

    @Override
    public String extension() {
        return "svg";
    }

    @Override
    public String label() {
        return "SVG pictures, one a page";
    }

    @Override
    public List<ExportedFile> export(ChartContent content, String baseName, OffsetDateTime created)
            throws IOException {
        List<Picture> pages = ChartPages.of(content, created).pages();
        List<ExportedFile> files = new ArrayList<>();
        for (int page = 0; page < pages.size(); page++) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new SvgWriter().write(pages.get(page), bytes);
            String number = pages.size() == 1 ? "" : "-" + (page + 1);
            files.add(new ExportedFile(baseName + number + ".svg", bytes.toByteArray()));
        }
        return files;
    }
}
