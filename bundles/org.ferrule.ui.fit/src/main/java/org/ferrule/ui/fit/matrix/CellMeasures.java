/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.stream.Stream;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.ferrule.chart.look.VerdictLook;

/** Sizes in pixels that follow from the font and the zoom. */
final class CellMeasures {

    static final int PADDING = 5;
    static final int EDGE = 3;
    private static final int HEAD_LINES = 5;
    private static final int TURNED_HEAD = 19;
    private static final int ROW_HEAD = 36;
    private static final int LEAST_ROW_HEAD = 15;
    private static final float LARGER = 1.35f;
    private static final String WIDEST_NUMBER = "-0.0000 mm";

    private final Zoom zoom;
    private final Font font;
    private final Font bold;
    private final int line;
    private final int letter;
    private final int cellWidth;

    CellMeasures(ResourceManager resources, Zoom zoom) {
        this.zoom = zoom;
        FontDescriptor text = FontDescriptor.createFrom(JFaceResources.getDialogFont());
        FontDescriptor sized = zoom == Zoom.LARGE ? text.setHeight(Math.round(size(text) * LARGER)) : text;
        font = resources.create(sized);
        bold = resources.create(sized.setStyle(SWT.BOLD));
        GC gc = new GC(resources.getDevice());
        gc.setFont(font);
        line = gc.getFontMetrics().getHeight();
        letter = (int) Math.ceil(gc.getFontMetrics().getAverageCharacterWidth());
        cellWidth = width(gc);
        gc.dispose();
    }

    private static int size(FontDescriptor text) {
        return text.getFontData()[0].getHeight();
    }

    private int width(GC gc) {
        int number = gc.textExtent(WIDEST_NUMBER).x;
        int words = Stream.of(VerdictLook.values()).mapToInt(look -> gc.textExtent(look.word()).x).max().orElse(0);
        return zoom.saysWords() ? glyph() + 3 * PADDING + Math.max(words, number) + mark()
                : glyph() + 3 * PADDING + gc.textExtent("-0.0000").x;
    }

    Font font() {
        return font;
    }

    Font bold() {
        return bold;
    }

    int line() {
        return line;
    }

    int letter() {
        return letter;
    }

    /** The size of the shape. */
    int glyph() {
        return zoom.saysWords() ? line : Math.round(line * 0.8f);
    }

    /** The size of a mark beside the verdict. */
    int mark() {
        return Math.round(line * 0.7f);
    }

    int cellWidth() {
        return cellWidth;
    }

    int cellHeight() {
        return (zoom.saysWords() ? 2 * line : line) + 2 * EDGE;
    }

    /** The width of the heads of rows in a table of a width: where that is small, they leave room for cells. */
    int rowHeadRoom(int tableWidth) {
        int letters = Math.max(LEAST_ROW_HEAD, Math.min(ROW_HEAD, tableWidth / 3 / letter));
        return letters * letter + 2 * PADDING;
    }

    /** The height of the heads of columns. */
    int columnHeadRoom() {
        return zoom.saysWords() ? HEAD_LINES * line + 2 * PADDING : TURNED_HEAD * letter + 2 * PADDING;
    }

    boolean turnsHeads() {
        return !zoom.saysWords();
    }

    /** The room of the groups' heads. */
    int groupRoom() {
        return line + 2 * PADDING;
    }
}
