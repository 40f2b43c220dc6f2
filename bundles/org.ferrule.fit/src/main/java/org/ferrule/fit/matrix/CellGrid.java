/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.HashMap;
import java.util.Map;

import org.ferrule.fit.quick.Marks;

/**
 * The words of all cells, in square tiles, so that matrices which differ in a line or a column share what is the same.
 * Nothing is written to a tile once a matrix has it.
 */
final class CellGrid {
    /** Cells along the side of a tile. */
    static final int SIDE = 1 << CellGrid.BITS;

    private static final int BITS = 5;

    private final int lines;
    private final int columns;
    private final long[][] tiles;

    CellGrid(int lines, int columns) {
        this.lines = lines;
        this.columns = columns;
        this.tiles = new long[tiles(lines) * tiles(columns)][];
    }

    /** How many tiles a number of cells needs. */
    static int tiles(int cells) {
        return cells + SIDE - 1 >> BITS;
    }

    /** The place of a cell within its tile. */
    static int within(int line, int column) {
        return (line & SIDE - 1) << BITS | column & SIDE - 1;
    }

    int lines() {
        return lines;
    }

    int columns() {
        return columns;
    }

    long[] tile(int tileLine, int tileColumn) {
        return tiles[tileLine * tiles(columns) + tileColumn];
    }

    void tile(int tileLine, int tileColumn, long[] words) {
        tiles[tileLine * tiles(columns) + tileColumn] = words;
    }

    /**
     * The word of a cell.
     *
     * @throws IndexOutOfBoundsException naming both when there is no such cell
     */
    long word(int line, int column) {
        if (line < 0 || line >= lines || column < 0 || column >= columns) {
            throw new IndexOutOfBoundsException(
                    "cell " + line + ", " + column + " of a matrix of " + lines + " by " + columns);
        }
        return tile(line >> BITS, column >> BITS)[within(line, column)];
    }

    /** How many cells have each verdict going in. */
    Map<PhaseVerdict, Integer> verdictsIn() {
        int[] byCode = new int[Marks.PHASE];
        for (int line = 0; line < lines; line++) {
            for (int column = 0; column < columns; column++) {
                byCode[Marks.in(CellWord.marks(tile(line >> BITS, column >> BITS)[within(line, column)]))]++;
            }
        }
        Map<PhaseVerdict, Integer> counts = new HashMap<>();
        for (int code = 0; code < byCode.length; code++) {
            if (byCode[code] > 0) {
                counts.put(CellWord.phase(code), byCode[code]);
            }
        }
        return counts;
    }
}
