/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.ferrule.fit.quick.QuickAnswer;
import org.ferrule.fit.quick.QuickBlock;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickRow;
import org.ferrule.fit.quick.QuickSolver;

/** Reads cells from devices that were made ready once, and asks the solver about those for which that is not enough. */
final class QuickSource implements CellSource {
    private final SolverSource exact;
    private final QuickSolver solver;
    /** Empty for a line of which the solver has to be asked. */
    private final Optional<QuickOuter>[] lines;
    private final Optional<QuickInner>[] columns;
    /** The columns once more, those of one tile in one block. */
    private final QuickBlock[] blocks;

    private QuickSource(SolverSource exact, QuickSolver solver, Optional<QuickOuter>[] lines,
            Optional<QuickInner>[] columns, QuickBlock[] blocks) {
        this.exact = exact;
        this.solver = solver;
        this.lines = lines;
        this.columns = columns;
        this.blocks = blocks;
    }

    /** A source for a question: a quick one where there can be one. */
    static CellSource of(MatrixQuestion question) {
        SolverSource exact = new SolverSource(question);
        Optional<QuickSolver> quick = QuickSolver.of(question.terms(), exact.solver());
        return quick.isEmpty() ? exact : of(question, exact, quick.get());
    }

    private static QuickSource of(MatrixQuestion question, SolverSource exact, QuickSolver solver) {
        Optional<QuickOuter>[] lines = all(question.outer().size(), i -> outer(solver, question, i));
        Optional<QuickInner>[] columns = all(question.inner().size(), i -> solver.inner(question.inner().get(i)));
        QuickBlock[] blocks = blocks(columns.length, tile -> block(solver, columns, tile));
        return new QuickSource(exact, solver, lines, columns, blocks);
    }

    /** A source for the next question, with the devices of this one that are the same. */
    @Override
    public CellSource next(MatrixQuestion question, Comparison comparison) {
        if (!comparison.hasSameTerms()) {
            return of(question);
        }
        Places outer = comparison.lines();
        Places inner = comparison.columns();
        Optional<QuickOuter>[] nextLines = all(question.outer().size(),
                i -> outer.same(i) ? lines[outer.former(i)] : outer(solver, question, i));
        Optional<QuickInner>[] nextColumns = all(question.inner().size(),
                i -> inner.same(i) ? columns[inner.former(i)] : solver.inner(question.inner().get(i)));
        boolean sameNumber = nextColumns.length == columns.length;
        QuickBlock[] nextBlocks = blocks(nextColumns.length, tile -> sameNumber && inner.isTileUntouched(tile)
                ? blocks[tile] : block(solver, nextColumns, tile));
        return new QuickSource(new SolverSource(question), solver, nextLines, nextColumns, nextBlocks);
    }

    private static Optional<QuickOuter> outer(QuickSolver solver, MatrixQuestion question, int line) {
        return solver.outer(question.outer().get(line).device(), question.outer().get(line).lumen());
    }

    private static QuickBlock block(QuickSolver solver, Optional<QuickInner>[] columns, int tile) {
        int from = tile * CellGrid.SIDE;
        return solver.block(IntStream.range(from, Math.min(columns.length, from + CellGrid.SIDE))
                .mapToObj(i -> columns[i]).toList());
    }

    private static QuickBlock[] blocks(int columns, IntFunction<QuickBlock> one) {
        return IntStream.range(0, CellGrid.tiles(columns)).mapToObj(one).toArray(QuickBlock[]::new);
    }

    @SuppressWarnings("unchecked")
    private static <T> Optional<T>[] all(int count, IntFunction<Optional<T>> one) {
        return IntStream.range(0, count).mapToObj(one).toArray(Optional[]::new);
    }

    @Override
    public Reader reader() {
        return new QuickReader();
    }

    /** Fills cells with scratch pads of its own. */
    private final class QuickReader implements Reader {
        private final QuickAnswer answer = solver.pad();
        private final QuickRow row = solver.row();

        @Override
        public long word(int line, int column) {
            boolean ready = lines[line].isPresent() && columns[column].isPresent();
            if (!ready || !answer.ask(lines[line].get(), columns[column].get())) {
                return exact.word(line, column);
            }
            return answer.hasPlace() ? CellWord.at(answer.marks(), answer.lumenName(), answer.deviceName(),
                    answer.worst(), answer.nominal()) : answer.marks();
        }

        @Override
        public void tileLine(int line, int tileColumn, long[] words, int at) {
            int from = tileColumn * CellGrid.SIDE;
            if (lines[line].isEmpty()) {
                exact.reader().tileLine(line, tileColumn, words, at);
                return;
            }
            QuickBlock block = blocks[tileColumn];
            row.ask(lines[line].get(), block);
            for (int i = 0; i < block.size(); i++) {
                words[at + i] = row.marks(i) == QuickRow.ASK_SOLVER ? exact.word(line, from + i) : rowWord(i);
            }
        }

        private long rowWord(int i) {
            return row.hasPlace(i)
                    ? CellWord.at(row.marks(i), row.lumenName(i), row.deviceName(i), row.worst(i), row.nominal(i))
                    : row.marks(i);
        }
    }
}
