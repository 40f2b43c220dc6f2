/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.LengthWords;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.quantity.Length;

/**
 * What a cell shows.
 *
 * @param look of the verdict going in
 * @param number the clearance in millimetres; empty for none
 * @param thousandths the clearance in thousandths of an inch; empty for none
 * @param worseOut the look coming out, where it is worse than going in
 * @param notes its footnotes
 * @param words a sentence about it
 */
record CellView(VerdictLook look, String number, String thousandths, Optional<VerdictLook> worseOut, List<Note> notes,
        String words) {
    private static final char MINUS = '\u2212';

    static CellView of(FitCell cell, ShownNumber shown, LengthWords lengths, List<Note> notes, String words) {
        Optional<Length> clearance = shown.of(cell);
        return new CellView(VerdictLook.of(cell.in()),
                clearance.map(c -> withMinus(lengths.clearanceMm(c))).orElse(""),
                clearance.map(c -> withMinus(lengths.thousandths(c))).orElse(""), VerdictLook.worseOut(cell), notes,
                words);
    }

    private static String withMinus(String number) {
        return number.replace('-', MINUS);
    }
}
