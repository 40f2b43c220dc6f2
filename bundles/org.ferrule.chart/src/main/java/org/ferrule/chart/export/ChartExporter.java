/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.export;

import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.List;

import org.ferrule.chart.page.ChartContent;

/**
 * A format in which fit charts leave the program. Exporters make bytes and open no files, so that whoever calls them
 * can write atomically. A plug-in adds its own through the extension point for exporters.
 */
public interface ChartExporter {

    /** The file name extension that stands for the format, in lower case and without a dot. */
    String extension();

    /** What the format is called, for people. */
    String label();

    /**
     * Exports a chart.
     *
     * @param baseName of the files, without extension
     * @param created stands in documents that carry a date of creation
     * @return one file, or several where the format has no pages
     * @throws IOException when the format's writer fails
     */
    List<ExportedFile> export(ChartContent content, String baseName, OffsetDateTime created) throws IOException;
}
