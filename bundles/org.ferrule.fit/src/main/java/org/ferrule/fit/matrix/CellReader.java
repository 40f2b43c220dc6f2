/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickRow;

/** Works out the words of cells with a scratch pad of its own; for the use of one thread. */
final class CellReader {
    private final SolverCells exact;
    private final Slots<Prepared<MatrixLine, QuickOuter>> lines;
    private final Slots<Prepared<ReadDevice, QuickInner>> columns;
    private final QuickOuter[] outers;
    private final QuickRow row;

    /**
     * A reader.
     *
     * @param outers by slot, what quick answers are made from; null where the solver has to be asked
     */
    CellReader(SolverCells exact, QuickOuter[] outers, Slots<Prepared<MatrixLine, QuickOuter>> lines,
            Slots<Prepared<ReadDevice, QuickInner>> columns, QuickRow row) {
        this.exact = exact;
        this.lines = lines;
        this.columns = columns;
        this.outers = outers;
        this.row = row;
    }

    /** Puts in the words of a line and a block of columns, from the place of that line in a tile on. */
    void fill(int line, CellBlock block, long[] words, int at) {
        if (outers[line] != null) {
            fill(line, outers[line], block, words, at);
        } else {
            ask(line, block, words, at);
        }
    }

    private void fill(int line, QuickOuter outer, CellBlock block, long[] words, int at) {
        if (block.fillCommon(row, outer, words, at)) {
            return;
        }
        row.ask(outer, block.quick());
        for (int i = 0; i < block.size(); i++) {
            words[at + block.within(i)] = row.marks(i) == QuickRow.ASK_SOLVER ? ask(line, block.slot(i)) : word(i);
        }
    }

    private long word(int i) {
        return row.hasPlace(i)
                ? CellWord.at(row.marks(i), row.lumenName(i), row.deviceName(i), row.worst(i), row.nominal(i))
                : row.marks(i);
    }

    private void ask(int line, CellBlock block, long[] words, int at) {
        for (int i = 0; i < block.size(); i++) {
            words[at + block.within(i)] = ask(line, block.slot(i));
        }
    }

    /** Nobody reads the word of slots that are free. */
    private long ask(int line, int column) {
        return lines.users(line) == 0 || columns.users(column) == 0 ? 0
                : exact.word(lines.standing(line), columns.standing(column));
    }
}
