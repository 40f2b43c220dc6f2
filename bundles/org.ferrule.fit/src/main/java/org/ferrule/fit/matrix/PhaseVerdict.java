/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Objects;

import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;

/**
 * What a cell says of one phase.
 *
 * @param verdict the answer
 * @param authority on what it rests
 */
public record PhaseVerdict(Verdict verdict, Authority authority) {

    public PhaseVerdict {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(authority, "authority");
    }

    /** The verdict of an answer. */
    public static PhaseVerdict of(PhaseAnswer answer) {
        return new PhaseVerdict(answer.verdict(), answer.authority());
    }
}
