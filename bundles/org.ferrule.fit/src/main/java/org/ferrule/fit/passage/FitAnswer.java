/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import org.ferrule.fit.device.Phase;

/**
 * The answer to a question: going in, and coming out after use.
 *
 * @param in on the way in
 * @param out on the way out, with outlines after use
 */
public record FitAnswer(PhaseAnswer in, PhaseAnswer out) {

    /** The answer for that phase. */
    public PhaseAnswer in(Phase phase) {
        return phase == Phase.IN ? in : out;
    }
}
