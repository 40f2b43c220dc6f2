/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.TextLayout;

/** Footnotes as blocks to be set in columns. */
final class NoteBlocks {
    private static final double NUMBER_MM = 5;
    private static final double COLUMN_MM = 78;
    static final double GAP_MM = 5;

    private NoteBlocks() {
    }

    static int columns(double widthMm, PageStyle style) {
        return Math.max(1, (int) ((widthMm + GAP_MM) / (COLUMN_MM * style.scale() + GAP_MM)));
    }

    static double columnMm(double widthMm, PageStyle style) {
        int columns = columns(widthMm, style);
        return (widthMm - (columns - 1) * GAP_MM) / columns;
    }

    static List<Block> of(PageNotes notes, PageStyle style, double columnMm) {
        double indent = NUMBER_MM * style.scale();
        List<Block> blocks = new ArrayList<>();
        for (Note note : notes.notes()) {
            blocks.add(new Block(Integer.toString(blocks.size() + 1), TextLayout.standard().wrap(note.text(),
                    style.small(), columnMm - indent), style.small(), indent, 0.3));
        }
        return blocks;
    }
}
