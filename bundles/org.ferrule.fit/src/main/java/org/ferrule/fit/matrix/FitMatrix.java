/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.quick.Marks;
import org.ferrule.fit.verdict.Verdict;

/**
 * A solved matrix: eight bytes for every pair, which say what a cell shows. The whole answer of a cell, with reasons and
 * evidence, is worked out when it is asked for. Immutable; a new question is solved from an old matrix by answering only
 * the pairs in which a device has changed.
 */
public final class FitMatrix {
    private final Cells cells;
    private final CellChanges changes;

    private FitMatrix(Cells cells, CellChanges changes) {
        this.cells = cells;
        this.changes = changes;
    }

    /**
     * Solves a matrix, on all processors where it is large.
     *
     * @throws SolveCancelledException when the progress says so
     */
    public static FitMatrix solve(MatrixQuestion question, Progress progress) {
        return solve(question, Optional.empty(), progress);
    }

    /**
     * Solves a question, taking over every cell whose devices and conditions are the same objects as before.
     *
     * @throws SolveCancelledException when the progress says so
     */
    public FitMatrix resolve(MatrixQuestion next, Progress progress) {
        return solve(next, Optional.of(cells), progress);
    }

    private static FitMatrix solve(MatrixQuestion question, Optional<Cells> before, Progress progress) {
        SectionNames names = new SectionNames(question);
        Optional<Comparison> comparison = before.map(cells -> new Comparison(cells, question, names));
        CellSource source = comparison.map(c -> before.get().source().next(question, c))
                .orElseGet(() -> CellSource.of(question));
        CellGrid grid = new Solving(source, before.map(Cells::grid), progress).fill();
        return new FitMatrix(new Cells(question, names, source, grid), new CellChanges(comparison, grid));
    }

    public MatrixQuestion question() {
        return cells.question();
    }

    /**
     * What a cell shows: {@link FitCell#of} of its answer, but for cautions of checks that are not made for matrices
     * ({@code FitCheck.inMatrix}).
     */
    public FitCell cell(int outerIndex, int innerIndex) {
        return cells.cell(outerIndex, innerIndex);
    }

    /** The verdict of a cell going in, for those who look through all of them. */
    public PhaseVerdict in(int outerIndex, int innerIndex) {
        return CellWord.phase(Marks.in(CellWord.marks(cells.grid().word(outerIndex, innerIndex))));
    }

    /** The whole answer of a cell, worked out now: a matter of microseconds, or of milliseconds for bundles. */
    public FitAnswer answer(int outerIndex, int innerIndex) {
        return cells.question().answer(outerIndex, innerIndex);
    }

    /** What this matrix answers differently from the one that it was solved from; none for a first one. */
    public CellChanges changes() {
        return changes;
    }

    /** How many cells have each verdict going in; every verdict is a key. */
    public Map<Verdict, Integer> counts() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, 0);
        }
        verdicts().forEach((in, count) -> counts.merge(in.verdict(), count, Integer::sum));
        return counts;
    }

    /** How many cells have each verdict on each authority going in; what no cell has is no key. */
    public Map<PhaseVerdict, Integer> verdicts() {
        return cells.grid().verdictsIn();
    }
}
