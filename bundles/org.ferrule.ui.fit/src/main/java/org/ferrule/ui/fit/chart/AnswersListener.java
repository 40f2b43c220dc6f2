/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.ferrule.engine.chart.SolvedChart;

/** Hears of the answers of a chart, on the display's thread. */
public interface AnswersListener {

    /**
     * There are new answers.
     *
     * @param solved the chart with its answers
     * @param onlyChanges whether all that is new stands in {@code solved.matrix().changes()}, but for the heads
     */
    void answered(SolvedChart solved, boolean onlyChanges);

    /** What is shown became stale, or is so no more, or something else is wrong than before. */
    default void answersChanged() {
    }

    /** A document that the chart refers to was saved, or came from elsewhere. */
    default void documentsSaved() {
    }

    /** The chart stands otherwise to its sign-off than before. */
    default void signedChanged() {
    }
}
