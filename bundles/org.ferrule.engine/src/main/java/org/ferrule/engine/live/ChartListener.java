/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import java.util.List;

import org.ferrule.engine.chart.ChartProblem;
import org.ferrule.engine.chart.SolvedChart;

/** Hears of a live chart, always on the model's thread. */
public interface ChartListener {

    /** Something was edited: what is shown is the last good answer, until {@link #solved} or {@link #failed}. */
    void stale();

    /** The chart is solved; {@code chart.matrix().changes()} says what is new. */
    void solved(SolvedChart chart);

    /** The chart cannot be solved as it stands; the last good answer is still the last one. */
    void failed(List<ChartProblem> problems);
}
