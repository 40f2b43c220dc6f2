/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.answer;

import java.util.Objects;

import org.ferrule.chart.words.PairNames;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;

/**
 * A question about two devices with its answer: what the parts of the workbench select and explain. Immutable.
 *
 * @param question what was asked
 * @param answer what came out
 */
public record AskedPair(FitQuestion question, FitAnswer answer) {

    /** Checks that nothing is missing. */
    public AskedPair {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
    }

    /** Returns what the two devices are called. */
    public PairNames names() {
        return PairNames.of(question);
    }
}
