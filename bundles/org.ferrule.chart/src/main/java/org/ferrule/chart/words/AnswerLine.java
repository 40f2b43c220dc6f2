/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.Objects;

import org.ferrule.fit.device.Phase;

/**
 * One line of an explanation.
 *
 * @param phase of which answer it speaks
 * @param kind what it is
 * @param text in words, without a full stop
 */
public record AnswerLine(Phase phase, Kind kind, String text) {

    /** What a line of an explanation is. */
    public enum Kind {
        /** The answer in one sentence. */
        SUMMARY,
        /** A reason that decides. */
        DECIDES,
        /** A contradiction between authorities. */
        CONFLICT,
        /** Something to watch. */
        CAUTION,
        /** Something that was assumed, or that stands beside the answer. */
        NOTE,
        /** Where figures were read. */
        SOURCE
    }

    public AnswerLine {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
    }
}
