/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.ferrule.picture.PictureBuilder;

/** Pieces of text that are not torn apart, set one after the other in columns of about one height. */
final class Pieces {
    private static final double GAP_MM = 4;
    private static final double STEP_MM = 1;
    private static final double ROUNDING_MM = 1e-9;

    private final Column prototype;
    private final int count;
    private final double columnMm;
    private final List<Column> pieces = new ArrayList<>();

    /**
     * Columns beside each other.
     *
     * @param prototype whose kind all pieces are
     */
    Pieces(Column prototype, int count, double widthMm) {
        this.prototype = prototype;
        this.count = count;
        this.columnMm = (widthMm - (count - 1) * GAP_MM) / count;
    }

    /** Adds a piece. */
    Pieces add(Consumer<Column> writer) {
        Column piece = prototype.sibling(columnMm);
        writer.accept(piece);
        pieces.add(piece);
        return this;
    }

    double heightMm() {
        return set().stream().mapToDouble(Pieces::heightMm).max().orElse(0);
    }

    private static double heightMm(List<Column> column) {
        return column.stream().mapToDouble(Column::heightMm).sum();
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        List<List<Column>> columns = set();
        for (int i = 0; i < columns.size(); i++) {
            double y = yMm;
            for (Column piece : columns.get(i)) {
                piece.draw(g, xMm + i * (columnMm + GAP_MM), y);
                y += piece.heightMm();
            }
        }
    }

    /** The lowest columns, a little higher at a time, into which all pieces go. */
    private List<List<Column>> set() {
        double height = Math.max(heightMm(pieces) / count,
                pieces.stream().mapToDouble(Column::heightMm).max().orElse(0));
        List<List<Column>> columns = filled(height);
        while (columns.size() > count) {
            height += STEP_MM;
            columns = filled(height);
        }
        return columns;
    }

    private List<List<Column>> filled(double mostMm) {
        List<List<Column>> columns = new ArrayList<>();
        double used = mostMm;
        for (Column piece : pieces) {
            if (columns.isEmpty() || used + piece.heightMm() > mostMm + ROUNDING_MM) {
                columns.add(new ArrayList<>());
                used = 0;
            }
            columns.get(columns.size() - 1).add(piece);
            used += piece.heightMm();
        }
        return columns;
    }
}
