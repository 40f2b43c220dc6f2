/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.EnumSet;
import java.util.Set;

import org.ferrule.chart.look.SideMark;
import org.ferrule.fit.passage.FitAnswer;

/** The marks beside a verdict. */
public final class CellMarks {

    private CellMarks() {
    }

    /** Returns the marks of an answer. */
    public static Set<SideMark> of(FitAnswer answer) {
        Set<SideMark> marks = EnumSet.noneOf(SideMark.class);
        if (answer.out().verdict().compareTo(answer.in().verdict()) > 0) {
            marks.add(SideMark.WORSE_OUT);
        }
        if (answer.in().hasConflict() || answer.out().hasConflict()) {
            marks.add(SideMark.CONFLICT);
        }
        if (answer.in().hasCaution() || answer.out().hasCaution()) {
            marks.add(SideMark.CAUTION);
        }
        return marks;
    }
}
