/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;

/**
 * How wide the row heads and the columns of a table are, on every page alike.
 *
 * @param headMm of row heads
 * @param columnMm of every column
 * @param columns the columns of each page
 */
record TableWidths(double headMm, double columnMm, List<Span> columns) {
    private static final double HEAD_MM = 44;
    private static final double LEAST_COLUMN_MM = 14;
    private static final double WIDEST_COLUMN_MM = 26;

    static TableWidths of(Sheet sheet, double roomMm) {
        double scale = sheet.style().scale();
        double head = HEAD_MM * scale;
        CellPainter painter = new CellPainter(sheet.style(), sheet.phrases());
        double least = sheet.allCells().mapToDouble(painter::leastWidthMm).reduce(LEAST_COLUMN_MM * scale, Math::max);
        int most = Math.max(1, (int) ((roomMm - head) / least));
        List<Span> columns = Span.cut(sheet.content().columns(), most);
        int longest = columns.stream().mapToInt(Span::size).max().orElse(1);
        double column = Math.min((roomMm - head) / Math.max(1, longest), WIDEST_COLUMN_MM * scale);
        return new TableWidths(head, column, columns);
    }
}
