/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.stream.IntStream;

/** A question beside the former one and its cells. */
final class Comparison {
    /** Fewer cells are compared sooner than threads are woken. */
    private static final int WORTH_SHARING = 50_000;

    private final Cells before;
    private final boolean sameTerms;
    private final MatrixQuestion question;
    private final SectionNames names;
    private final Places lines;
    private final Places columns;
    private final int[] touchedColumns;

    Comparison(Cells before, MatrixQuestion question, SectionNames names) {
        this.before = before;
        this.question = question;
        this.names = names;
        this.sameTerms = question.asksTheSameAs(before.question());
        this.lines = Places.ofLines(question.outer(), before.question().outer(), sameTerms);
        this.columns = Places.ofColumns(question.inner(), before.question().inner(), sameTerms);
        this.touchedColumns = columns.touched();
    }

    /** Whether the same is asked of pairs that are the same. */
    boolean hasSameTerms() {
        return sameTerms;
    }

    Places lines() {
        return lines;
    }

    Places columns() {
        return columns;
    }

    /** The columns of a line that are asked again. */
    IntStream asked(int line) {
        return lines.same(line) ? IntStream.of(touchedColumns) : IntStream.range(0, question.inner().size());
    }

    private boolean isNew(int line, int column) {
        return lines.former(line) < 0 || columns.former(column) < 0;
    }

    /** How many cells differ. */
    int differing(CellGrid now) {
        long asked = (long) lines.touched().length * columns.size() + (long) lines.size() * touchedColumns.length;
        IntStream all = IntStream.range(0, lines.size());
        return (asked >= WORTH_SHARING ? all.parallel() : all).map(line -> differing(line, now)).sum();
    }

    private int differing(int line, CellGrid now) {
        boolean isAll = !lines.same(line);
        int count = isAll ? columns.size() : touchedColumns.length;
        int differing = 0;
        for (int i = 0; i < count; i++) {
            int column = isAll ? i : touchedColumns[i];
            differing += differs(line, column, now.word(line, column)) ? 1 : 0;
        }
        return differing;
    }

    /** Whether a pair is new, or its cell not what it was. */
    boolean differs(int line, int column, long word) {
        if (isNew(line, column)) {
            return true;
        }
        long was = before.grid().word(lines.former(line), columns.former(column));
        if (!CellWord.isElsewhere(was) && !CellWord.isElsewhere(word)) {
            if (CellWord.differ(was, word)) {
                return true;
            }
            if (was == word && lines.sameNames(line) && columns.sameNames(column)) {
                return false;
            }
        }
        return !former(line, column).equals(Optional.of(now(line, column, word)));
    }

    /** The former cell; empty for a new pair. */
    Optional<FitCell> former(int line, int column) {
        return isNew(line, column) ? Optional.empty()
                : Optional.of(before.cell(lines.former(line), columns.former(column)));
    }

    FitCell now(int line, int column, long word) {
        return Cells.cell(question, names, line, column, word);
    }
}
