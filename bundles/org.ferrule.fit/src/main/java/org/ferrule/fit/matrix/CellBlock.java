/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.stream.IntStream;

import org.ferrule.fit.quick.QuickBlock;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickRow;

/** Columns of a tile that are asked about together. Immutable. */
final class CellBlock {
    private final QuickBlock quick;
    private final int[] slots;
    private final int[] within;
    private final boolean isRow;
    private final CellParts widest;
    private final CellParts tips;

    /**
     * A block.
     *
     * @param quick the devices
     * @param slots theirs, in order, all of one tile
     */
    CellBlock(QuickBlock quick, int[] slots) {
        this.quick = quick;
        this.slots = slots.clone();
        this.within = IntStream.of(slots).map(slot -> CellGrid.within(0, slot)).toArray();
        this.isRow = IntStream.range(0, slots.length).allMatch(i -> within[i] == i);
        this.widest = new CellParts(quick, false);
        this.tips = new CellParts(quick, true);
    }

    QuickBlock quick() {
        return quick;
    }

    int size() {
        return slots.length;
    }

    int slot(int i) {
        return slots[i];
    }

    /** The place of a column within its line of a tile. */
    int within(int i) {
        return within[i];
    }

    /** Puts in the words of a lumen where all columns have the same answer but for the clearance; tells whether so. */
    boolean fillCommon(QuickRow row, QuickOuter outer, long[] words, int at) {
        return fillCommon(row, outer, false, widest, words, at) || fillCommon(row, outer, true, tips, words, at);
    }

    private boolean fillCommon(QuickRow row, QuickOuter outer, boolean atTip, CellParts parts, long[] words, int at) {
        int marks = row.common(outer, quick, atTip);
        if (marks == QuickRow.ASK_SOLVER || !parts.hold(outer)) {
            return false;
        }
        if (isRow) {
            parts.fill(marks, outer, words, at);
        } else {
            parts.fill(marks, outer, words, at, within);
        }
        return true;
    }
}
