/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;

/** What holds a verdict where it is, whatever size the section has. */
public enum Holds {
    /** A claim of the papers. */
    CLAIM,
    /** A bench result. */
    BENCH,
    /** A check that no statement outranks, such as whether the device is long enough. */
    ANOTHER_CHECK,
    /** A figure or a length that is missing elsewhere. */
    MISSING_FIGURE,
    /** Another section, which is tighter: the limiting place of the answer. */
    ANOTHER_SECTION,
    /** Nothing: the section never meets what it is asked about. */
    NEVER_MET;

    /** What holds that answer. */
    static Holds of(PhaseAnswer answer) {
        if (answer.authority() != Authority.GEOMETRY) {
            return answer.authority() == Authority.CLAIM ? CLAIM : BENCH;
        }
        if (answer.verdict() != answer.geometry()) {
            return ANOTHER_CHECK;
        }
        if (answer.verdict() == Verdict.UNKNOWN) {
            return MISSING_FIGURE;
        }
        return answer.verdict() == Verdict.FITS ? NEVER_MET : ANOTHER_SECTION;
    }
}
