/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.picture.Picture;

/** Writes pieces one below the other, in one column of a sheet. */
final class SheetWriter {

    private final List<Piece> pieces = new ArrayList<>();
    private final Map<Integer, Rectangle> steps = new HashMap<>();
    private final Map<String, Rectangle> folds = new HashMap<>();
    private final Display display;
    private final LadderFonts fonts;
    private final int left;
    private final int width;
    private int y;

    /**
     * Begins a column.
     *
     * @param left where it begins, in pixels
     * @param top where it begins
     * @param width of the column
     */
    SheetWriter(Display display, LadderFonts fonts, int left, int top, int width) {
        this.display = display;
        this.fonts = fonts;
        this.left = left;
        this.width = width;
        this.y = top;
    }

    LadderFonts fonts() {
        return fonts;
    }

    /** Returns how far down the column goes. */
    int bottom() {
        return y;
    }

    void skip(double lines) {
        y += fonts.space(lines);
    }

    /** Writes words over the whole column, but for an indent. */
    void text(Font font, LadderInk ink, int indent, String words) {
        text(font, ink.color(), indent, width - indent, words);
    }

    private void text(Font font, Color color, int indent, int room, String words) {
        TextPiece piece = new TextPiece(display, font, color, left + indent, y, room, words);
        pieces.add(piece);
        y += piece.bounds().height;
    }

    /** Writes lines with a label beside the first of them; nothing when there are no lines. */
    void labelled(int indent, int labelWidth, int right, String label, List<Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        int top = y;
        text(fonts.small(), LadderInk.MUTED.color(), indent, labelWidth, label);
        int below = y;
        y = top;
        for (Line line : lines) {
            line.write(this, indent + labelWidth, width - indent - labelWidth - right);
        }
        y = Math.max(y, below);
        skip(0.3);
    }

    /**
     * Writes a heading that folds and unfolds what is written below it.
     *
     * @param key that does so too
     */
    void fold(String part, boolean open, int indent, String heading, char key) {
        int top = y;
        text(fonts.small(), LadderInk.NEXT.color(), indent, width - indent,
                (open ? "\u25be  " : "\u25b8  ") + heading + "  (" + key + ")");
        folds.put(part, new Rectangle(left + indent, top, width - indent, y - top));
        skip(open ? 0.2 : 0);
    }

    /** A line beside a label. */
    interface Line {
        void write(SheetWriter writer, int indent, int room);

        /** Words. */
        static Line of(Font font, LadderInk ink, String words) {
            return (writer, indent, room) -> writer.text(font, ink.color(), indent, room, words);
        }

        /** Words behind the shape of a verdict. */
        static Line of(VerdictLook look, Font font, LadderInk ink, String words) {
            return (writer, indent, room) -> writer.marked(look, font, ink, indent, room, words);
        }
    }

    private void marked(VerdictLook look, Font font, LadderInk ink, int indent, int room, String words) {
        int size = fonts.space(1);
        pieces.add(new GlyphPiece(look, left + indent, y + fonts.space(0.1), size));
        text(font, ink.color(), indent + size + fonts.space(0.4), room - size - fonts.space(0.4), words);
        y = Math.max(y, pieces.get(pieces.size() - 1).bounds().y + size);
    }

    /**
     * Writes a picture.
     *
     * @param print the same in the inks of print
     */
    void picture(Picture picture, Supplier<Picture> print, int indent, double pixelsPerMm) {
        PicturePiece piece = new PicturePiece(picture, print, left + indent, y, pixelsPerMm);
        pieces.add(piece);
        y += piece.bounds().height;
    }

    /** Adds a piece that stands where it says. */
    void add(Piece piece) {
        pieces.add(piece);
    }

    int left() {
        return left;
    }

    int width() {
        return width;
    }

    /** Begins a box; its ground comes behind all that is written until it ends. */
    int begin() {
        skip(0.5);
        return pieces.size();
    }

    /** Ends a box. */
    Rectangle end(int begun, int top, LadderInk ground, LadderInk edge, LadderInk bar) {
        skip(0.5);
        Rectangle bounds = new Rectangle(left, top, width, y - top);
        pieces.add(begun, new BoxPiece(bounds, ground.color(), edge.color(), bar == null ? null : bar.color()));
        return bounds;
    }

    /** Notes where a step stands. */
    void step(int number, Rectangle bounds) {
        steps.put(number, bounds);
    }

    /** Returns what was written in several columns as one sheet. */
    static Sheet sheet(int margin, SheetWriter... columns) {
        List<Piece> all = new ArrayList<>();
        Map<Integer, Rectangle> steps = new HashMap<>();
        Map<String, Rectangle> folds = new HashMap<>();
        int height = 0;
        for (SheetWriter column : columns) {
            all.addAll(column.pieces);
            steps.putAll(column.steps);
            folds.putAll(column.folds);
            height = Math.max(height, column.y + margin);
        }
        return new Sheet(all, steps, folds, height);
    }
}
