/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;

import org.ferrule.picture.Box;
import org.ferrule.picture.PictureBuilder;

/** The parts of a chart's table that stand below each other on one page, with the footnotes that they share. */
final class TablePage {
    private static final double BETWEEN_MM = 4;
    private static final double ABOVE_NOTES_MM = 2;

    private final PageNotes notes = new PageNotes();
    private final List<Table> tables;
    private final Block.Columns set;
    private final List<Block> all;
    private final double roomMm;

    /**
     * Lays out some rows of some runs of columns.
     *
     * @param columns a run of columns for every part
     */
    TablePage(Sheet sheet, TableWidths widths, Span rows, List<Span> columns, Box room) {
        this.tables = columns.stream().map(run -> new Table(sheet, widths, rows, run, notes)).toList();
        this.roomMm = room.heightMm();
        PageStyle style = sheet.style();
        double columnMm = NoteBlocks.columnMm(room.widthMm(), style);
        this.all = NoteBlocks.of(notes, style, columnMm);
        this.set = Block.set(all, NoteBlocks.columns(room.widthMm(), style), columnMm, NoteBlocks.GAP_MM,
                Math.max(0, roomMm - tablesMm() - ABOVE_NOTES_MM));
    }

    private double tablesMm() {
        return tables.stream().mapToDouble(Table::heightMm).sum() + (tables.size() - 1) * BETWEEN_MM;
    }

    /** The height of the parts and of the footnotes for which there is room. */
    double heightMm() {
        return tablesMm() + ABOVE_NOTES_MM + set.heightMm();
    }

    /** Whether everything fits, footnotes too. */
    boolean fits() {
        return tablesMm() + ABOVE_NOTES_MM <= roomMm && leftOver().isEmpty();
    }

    /** The footnotes for which there is no room. */
    List<Block> leftOver() {
        return all.subList(set.size(), all.size());
    }

    void draw(PictureBuilder g, Box room) {
        double y = room.yMm();
        for (Table table : tables) {
            table.draw(g, room.xMm(), y);
            y += table.heightMm() + BETWEEN_MM;
        }
        set.draw(g, room.xMm(), y - BETWEEN_MM + ABOVE_NOTES_MM);
    }
}
