/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumSet;
import java.util.Set;

import org.ferrule.chart.look.SideMark;
import org.ferrule.fit.matrix.FitCell;

/** The marks beside a verdict. */
public final class CellMarks {

    private CellMarks() {
    }

    /** Returns the marks of a cell. */
    public static Set<SideMark> of(FitCell cell) {
        Set<SideMark> marks = EnumSet.noneOf(SideMark.class);
        if (cell.out().verdict().compareTo(cell.in().verdict()) > 0) {
            marks.add(SideMark.WORSE_OUT);
        }
        if (cell.hasConflict()) {
            marks.add(SideMark.CONFLICT);
        }
        if (cell.hasCaution()) {
            marks.add(SideMark.CAUTION);
        }
        return marks;
    }
}
