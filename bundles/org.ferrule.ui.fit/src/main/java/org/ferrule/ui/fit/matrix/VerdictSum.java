/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.Comparator;
import java.util.stream.IntStream;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.verdict.Verdict;

/** How many cells have each verdict going in. */
public final class VerdictSum {

    /** More that fit first; of those that are alike, more that are tight, then more that are unknown. */
    static final Comparator<VerdictSum> BEST_FIRST = Comparator
            .<VerdictSum>comparingInt(sum -> -sum.of(Verdict.FITS)).thenComparingInt(sum -> -sum.of(Verdict.TIGHT))
            .thenComparingInt(sum -> -sum.of(Verdict.UNKNOWN));

    private final int[] counts = new int[Verdict.values().length];

    void add(Verdict verdict, int count) {
        counts[verdict.ordinal()] += count;
    }

    void add(VerdictSum other) {
        for (Verdict verdict : Verdict.values()) {
            add(verdict, other.of(verdict));
        }
    }

    /** Returns how many cells have a verdict. */
    public int of(Verdict verdict) {
        return counts[verdict.ordinal()];
    }

    /** Returns how many cells there are. */
    public int total() {
        return IntStream.of(counts).sum();
    }

    /** Returns the look that stands for a verdict, whatever it rests on. */
    static VerdictLook look(Verdict verdict) {
        return VerdictLook.valueOf(verdict.name());
    }

    /** Returns the sum in words. */
    String inWords() {
        StringBuilder words = new StringBuilder();
        for (Verdict verdict : Verdict.values()) {
            words.append(words.isEmpty() ? "" : ", ").append(of(verdict)).append(' ').append(look(verdict).word());
        }
        return words.toString();
    }
}
