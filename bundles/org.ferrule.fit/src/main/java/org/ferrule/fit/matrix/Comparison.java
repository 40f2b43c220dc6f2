/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.stream.IntStream;

/** A question beside the former one and its cells. */
final class Comparison {
    private final Cells before;
    private final boolean sameTerms;
    private final MatrixQuestion question;
    private final Places lines;
    private final Places columns;
    private final int[] touchedColumns;

    Comparison(Cells before, MatrixQuestion question) {
        this.before = before;
        this.question = question;
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

    /** Whether a whole tile of the former matrix holds. */
    boolean isTileKept(int tileLine, int tileColumn) {
        return lines.isTileUntouched(tileLine) && columns.isTileUntouched(tileColumn);
    }

    long[] formerTile(int tileLine, int tileColumn) {
        return before.grid().tile(tileLine, tileColumn);
    }

    /** How many cells are asked again. */
    long asked() {
        long all = (long) question.outer().size() * question.inner().size();
        long kept = (long) (question.outer().size() - lines.touched().length)
                * (question.inner().size() - touchedColumns.length);
        return all - kept;
    }

    /** The columns of a line that are asked again. */
    IntStream asked(int line) {
        return lines.same(line) ? IntStream.of(touchedColumns) : IntStream.range(0, question.inner().size());
    }

    /** Whether a cell is what it was without being asked again. */
    boolean isKept(int line, int column) {
        return lines.same(line) && columns.same(column);
    }

    private boolean isNew(int line, int column) {
        return lines.former(line) < 0 || columns.former(column) < 0;
    }

    /** The former word of a pair that is not new. */
    long formerWord(int line, int column) {
        return before.grid().word(lines.former(line), columns.former(column));
    }

    /** Whether a pair is new, or its cell not what it was. */
    boolean differs(int line, int column, long word) {
        if (isNew(line, column)) {
            return true;
        }
        long was = formerWord(line, column);
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
        return Cells.cell(question, line, column, word);
    }
}
