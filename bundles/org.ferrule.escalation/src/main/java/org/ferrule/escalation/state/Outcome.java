/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

/** How an attempt ended. */
public enum Outcome {
    /** The device is across. */
    CROSSED("crossed"),
    /** It was tried and did not pass. */
    FAILED("failed"),
    /** It was given up before it was tried properly, so it is not counted. */
    GIVEN_UP("given up");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    /** The word for it, as documents write it. */
    public String word() {
        return word;
    }
}
