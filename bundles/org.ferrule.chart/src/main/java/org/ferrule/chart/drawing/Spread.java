/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Places things in a row so that none overlaps its neighbour and all stay as near as possible to where they belong
 * (least squares, by pooling neighbours that push each other).
 */
final class Spread {
    private Spread() {
    }

    /**
     * Places things by their middles.
     *
     * @param wanted where their middles belong, in rising order
     * @param widths how wide they are, gaps included
     * @param from the left end of the row
     * @param to the right end of the row
     * @return their middles; where there is not room for all, they begin at the left end and run over the right one
     */
    static List<Double> middles(List<Double> wanted, List<Double> widths, double from, double to) {
        List<Double> offsets = new ArrayList<>();
        double offset = 0;
        for (double width : widths) {
            offsets.add(offset + width / 2);
            offset += width;
        }
        double last = Math.max(from, to - offset);
        List<Double> starts = pooled(wanted, offsets);
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            middles.add(Math.max(from, Math.min(last, starts.get(i))) + offsets.get(i));
        }
        return middles;
    }

    /** Where the row would have to begin for each thing to be in place, made non-decreasing. */
    private static List<Double> pooled(List<Double> wanted, List<Double> offsets) {
        List<double[]> pools = new ArrayList<>();
        for (int i = 0; i < wanted.size(); i++) {
            double[] pool = { wanted.get(i) - offsets.get(i), 1 };
            while (!pools.isEmpty() && pools.get(pools.size() - 1)[0] > pool[0]) {
                double[] before = pools.remove(pools.size() - 1);
                pool = new double[] { (before[0] * before[1] + pool[0] * pool[1]) / (before[1] + pool[1]),
                    before[1] + pool[1] };
            }
            pools.add(pool);
        }
        List<Double> starts = new ArrayList<>();
        for (double[] pool : pools) {
            for (int i = 0; i < pool[1]; i++) {
                starts.add(pool[0]);
            }
        }
        return starts;
    }
}
