/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.LoggedAttempt;

/** How an entry of the log ended. */
public enum Ending {
    /** The device is across. */
    CROSSED("crossed"),
    /** The set-up succeeded. */
    IN_PLACE("in place"),
    /** It was tried, and failed. */
    FAILED("failed"),
    /** It was given up before it was tried properly. */
    GIVEN_UP("given up"),
    /** Nobody wrote down how it ended. */
    NOT_STATED("not stated");

    private final String word;

    Ending(String word) {
        this.word = word;
    }

    /** The words for it. */
    public String word() {
        return word;
    }

    static Ending of(LoggedAttempt entry, boolean setup) {
        if (!entry.isSetOutcome()) {
            return NOT_STATED;
        }
        if (entry.getOutcome() == AttemptOutcome.CROSSED) {
            return setup ? IN_PLACE : CROSSED;
        }
        return entry.getOutcome() == AttemptOutcome.FAILED ? FAILED : GIVEN_UP;
    }
}
