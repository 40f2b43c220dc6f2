/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/** One run over a matrix: tiles that hold are taken over, the others filled, several at a time where that pays. */
final class Solving {
    /** Fewer cells are answered sooner than threads are woken. */
    private static final int WORTH_SHARING = 20_000;

    private final MatrixQuestion question;
    private final CellSource source;
    private final Optional<Comparison> comparison;
    private final Progress progress;
    private final CellGrid grid;
    private final AtomicInteger changed = new AtomicInteger();
    private int linesDone;

    Solving(MatrixQuestion question, CellSource source, Optional<Comparison> comparison, Progress progress) {
        this.question = question;
        this.source = source;
        this.comparison = comparison;
        this.progress = progress;
        this.grid = new CellGrid(question.outer().size(), question.inner().size());
    }

    /**
     * Fills all tiles.
     *
     * @throws SolveCancelledException when the progress says so
     */
    CellGrid fill() {
        long asked = comparison.map(Comparison::asked).orElse((long) grid.lines() * grid.columns());
        IntStream tileLines = IntStream.range(0, CellGrid.tiles(grid.lines()));
        (asked >= WORTH_SHARING ? tileLines.parallel() : tileLines).forEach(this::fillTileLine);
        return grid;
    }

    /** What differs from the matrix before; to be asked when all is filled. */
    CellChanges changes() {
        return new CellChanges(changed.get(), comparison, grid);
    }

    private void fillTileLine(int tileLine) {
        if (progress.isCancelled()) {
            throw new SolveCancelledException();
        }
        CellSource.Reader reader = source.reader();
        for (int tileColumn = 0; tileColumn < CellGrid.tiles(grid.columns()); tileColumn++) {
            grid.tile(tileLine, tileColumn, tile(tileLine, tileColumn, reader));
        }
        tellWorked(Math.min(CellGrid.SIDE, grid.lines() - tileLine * CellGrid.SIDE));
    }

    private synchronized void tellWorked(int lines) {
        linesDone += lines;
        progress.worked(linesDone, grid.lines());
    }

    private long[] tile(int tileLine, int tileColumn, CellSource.Reader reader) {
        if (comparison.isPresent() && comparison.get().isTileKept(tileLine, tileColumn)) {
            return comparison.get().formerTile(tileLine, tileColumn);
        }
        long[] words = new long[CellGrid.SIDE * CellGrid.SIDE];
        int endLine = Math.min(grid.lines(), (tileLine + 1) * CellGrid.SIDE);
        int endColumn = Math.min(grid.columns(), (tileColumn + 1) * CellGrid.SIDE);
        for (int line = tileLine * CellGrid.SIDE; line < endLine; line++) {
            int from = tileColumn * CellGrid.SIDE;
            if (comparison.isEmpty()) {
                reader.tileLine(line, tileColumn, words, CellGrid.within(line, from));
            } else {
                compareLine(comparison.get(), line, from, endColumn, words, reader);
            }
        }
        return words;
    }

    private void compareLine(Comparison with, int line, int from, int to, long[] words, CellSource.Reader reader) {
        int differ = 0;
        for (int column = from; column < to; column++) {
            boolean kept = with.isKept(line, column);
            long word = kept ? with.formerWord(line, column) : reader.word(line, column);
            words[CellGrid.within(line, column)] = word;
            differ += !kept && with.differs(line, column, word) ? 1 : 0;
        }
        if (differ > 0) {
            changed.addAndGet(differ);
        }
    }
}
