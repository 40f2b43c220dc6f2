/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.PhaseVerdict;

/** How many cells of a chart have each look; every look is a key. */
public record Counts(Map<VerdictLook, Integer> byLook) {

    public Counts {
        byLook = Map.copyOf(byLook);
    }

    /** Counts going in. */
    public static Counts in(ChartContent content) {
        return count(content, FitCell::in);
    }

    /** Counts coming out. */
    public static Counts out(ChartContent content) {
        return count(content, FitCell::out);
    }

    private static Counts count(ChartContent content, Function<FitCell, PhaseVerdict> phase) {
        Map<VerdictLook, Integer> counts = new EnumMap<>(VerdictLook.class);
        for (VerdictLook look : VerdictLook.values()) {
            counts.put(look, 0);
        }
        for (int row = 0; row < content.rows().size(); row++) {
            for (int column = 0; column < content.columns().size(); column++) {
                content.answers().cell(row, column).map(phase)
                        .ifPresent(verdict -> counts.merge(VerdictLook.of(verdict), 1, Integer::sum));
            }
        }
        return new Counts(counts);
    }

    /** How many have that look. */
    public int of(VerdictLook look) {
        return byLook.get(look);
    }

    /** All of them in words, such as "12 fits, 3 tight", in the order of the looks. */
    public String inWords() {
        return Arrays.stream(VerdictLook.values()).map(look -> of(look) + " " + look.word())
                .collect(Collectors.joining(", "));
    }
}
