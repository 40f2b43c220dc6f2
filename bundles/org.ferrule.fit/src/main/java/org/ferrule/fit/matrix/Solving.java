/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;

/** One run over a matrix: tiles that hold are taken over, the others filled, several at a time where that pays. */
final class Solving {
    /** Fewer cells are answered sooner than threads are woken. */
    private static final int WORTH_SHARING = 20_000;

    private final CellSource source;
    private final Slots<Prepared<MatrixLine, QuickOuter>> lines;
    private final Slots<Prepared<ReadDevice, QuickInner>> columns;
    private final int[] freshTiles;
    private final Progress progress;
    private final CellGrid grid;
    private int linesDone;

    /**
     * A run.
     *
     * @param former the grid of the matrix before
     */
    Solving(CellSource source, Optional<CellGrid> former, Progress progress) {
        this.source = source;
        this.lines = source.lines();
        this.columns = source.columns();
        this.freshTiles = allTiles().filter(tile -> source.freshBlock(tile).isPresent()).toArray();
        this.progress = progress;
        this.grid = new CellGrid(lines, columns, former.filter(g -> !lines.isNew()));
    }

    private IntStream allTiles() {
        return IntStream.range(0, CellGrid.tiles(columns.count()));
    }

    /**
     * Fills all tiles.
     *
     * @throws SolveCancelledException when the progress says so
     */
    CellGrid fill() {
        long asked = (long) lines.freshCount() * columns.count() + (long) lines.count() * columns.freshCount();
        IntStream tileLines = IntStream.range(0, CellGrid.tiles(lines.count()));
        (asked >= WORTH_SHARING ? tileLines.parallel() : tileLines).forEach(this::fillTileLine);
        return grid;
    }

    private void fillTileLine(int tileLine) {
        if (progress.isCancelled()) {
            throw new SolveCancelledException();
        }
        int[] slots = lines.slotsOf(tileLine);
        boolean hasFresh = IntStream.of(slots).anyMatch(lines::isFresh);
        CellReader reader = source.reader();
        (hasFresh ? allTiles() : IntStream.of(freshTiles)).forEach(tile -> fillTile(tileLine, slots, tile, reader));
        tellWorked(slots.length);
    }

    private synchronized void tellWorked(int number) {
        linesDone += number;
        progress.worked(linesDone, lines.count());
    }

    private void fillTile(int tileLine, int[] slots, int tile, CellReader reader) {
        Optional<long[]> former = grid.tile(tileLine, tile);
        long[] words = former.map(long[]::clone).orElseGet(() -> new long[CellGrid.SIDE * CellGrid.SIDE]);
        CellBlock block = source.block(tile);
        Optional<CellBlock> freshBlock = source.freshBlock(tile);
        for (int line : slots) {
            int at = CellGrid.within(line, 0);
            if (former.isEmpty() || lines.isFresh(line)) {
                reader.fill(line, block, words, at);
            } else if (freshBlock.isPresent()) {
                reader.fill(line, freshBlock.get(), words, at);
            }
        }
        grid.tile(tileLine, tile, words);
    }
}
