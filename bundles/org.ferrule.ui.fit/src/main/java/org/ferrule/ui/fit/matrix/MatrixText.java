/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.List;
import java.util.StringJoiner;
import java.util.stream.IntStream;

import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.ferrule.fit.matrix.FitCell;

/** Writes cells as text with tabs between, headed by the names of the devices. */
final class MatrixText {

    private static final String TAB = "\t";

    private final MatrixContent content;
    private final CellWords words;

    MatrixText(MatrixContent content, CellWords words) {
        this.content = content;
        this.words = words;
    }

    /** The smallest block around the selected cells, what is not selected in it left empty; nothing without any. */
    String of(SelectionLayer selection) {
        int[] columns = selection.getSelectedColumnPositions();
        if (columns.length == 0) {
            return "";
        }
        List<Integer> rows = selection.getSelectedRowPositions().stream()
                .flatMap(range -> IntStream.range(range.start, range.end).boxed()).sorted().distinct().toList();
        StringBuilder text = new StringBuilder(heading(columns));
        for (int row : rows) {
            text.append('\n').append(name(content.rows(), row));
            for (int column : columns) {
                text.append(TAB).append(selection.isCellPositionSelected(column, row) ? cell(row, column) : "");
            }
        }
        return text.toString();
    }

    private String heading(int[] columns) {
        StringJoiner heading = new StringJoiner(TAB);
        heading.add("");
        IntStream.of(columns).forEach(column -> heading.add(name(content.columns(), column)));
        return heading.toString();
    }

    private static String name(MatrixAxis axis, int position) {
        MatrixLine line = axis.line(position);
        String detail = line.detail();
        return plain(line.head().title() + (detail.isEmpty() ? "" : " (" + detail + ")"));
    }

    private String cell(int row, int column) {
        if (content.value(row, column) instanceof VerdictSum sum) {
            return sum.inWords();
        }
        FitCell cell = content.cell(row, column);
        return (words.verdict(cell) + " " + words.clearance(cell)).trim();
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
