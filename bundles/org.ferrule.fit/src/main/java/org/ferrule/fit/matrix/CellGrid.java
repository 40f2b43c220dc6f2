/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.quick.Marks;

/**
 * The words of all cells by the slots of their lines and columns, in square tiles, so that matrices which differ in a
 * line or a column share what is the same. Nothing is written to a tile once a matrix has it.
 */
final class CellGrid {
    /** Cells along the side of a tile. */
    static final int SIDE = 1 << CellGrid.BITS;

    private static final int BITS = 5;

    private final Slots<?> lines;
    private final Slots<?> columns;
    private final int tileColumns;
    private final long[][] tiles;

    /** A grid without words, but for those tiles of a former grid that there are in this one too. */
    CellGrid(Slots<?> lines, Slots<?> columns, Optional<CellGrid> former) {
        this.lines = lines;
        this.columns = columns;
        this.tileColumns = tiles(columns.count());
        this.tiles = new long[tiles(lines.count()) * tileColumns][];
        former.ifPresent(this::copyTiles);
    }

    private void copyTiles(CellGrid from) {
        if (tileColumns == from.tileColumns) {
            System.arraycopy(from.tiles, 0, tiles, 0, Math.min(from.tiles.length, tiles.length));
            return;
        }
        int width = Math.min(tileColumns, from.tileColumns);
        for (int line = 0; line < Math.min(tiles(lines.count()), tiles(from.lines.count())); line++) {
            System.arraycopy(from.tiles, line * from.tileColumns, tiles, line * tileColumns, width);
        }
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
        return lines.size();
    }

    /** The words of a tile; absent when they are not known yet. */
    Optional<long[]> tile(int tileLine, int tileColumn) {
        return Optional.ofNullable(tiles[tileLine * tileColumns + tileColumn]);
    }

    void tile(int tileLine, int tileColumn, long[] words) {
        tiles[tileLine * tileColumns + tileColumn] = words;
    }

    /**
     * The word of a cell.
     *
     * @throws IndexOutOfBoundsException naming both when there is no such cell
     */
    long word(int line, int column) {
        if (line < 0 || line >= lines.size() || column < 0 || column >= columns.size()) {
            throw new IndexOutOfBoundsException(
                    "cell " + line + ", " + column + " of a matrix of " + lines.size() + " by " + columns.size());
        }
        return wordAt(lines.slot(line), columns.slot(column));
    }

    private long wordAt(int line, int column) {
        return tiles[(line >> BITS) * tileColumns + (column >> BITS)][within(line, column)];
    }

    /** How many cells have each verdict going in. */
    Map<PhaseVerdict, Integer> verdictsIn() {
        int[] byCode = new int[Marks.PHASE];
        for (int line = 0; line < lines.count(); line++) {
            for (int column = 0; lines.users(line) > 0 && column < columns.count(); column++) {
                byCode[Marks.in(CellWord.marks(wordAt(line, column)))] += lines.users(line) * columns.users(column);
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
