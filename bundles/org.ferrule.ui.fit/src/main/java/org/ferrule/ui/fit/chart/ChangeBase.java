/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

/** Since when changes are shown. */
public enum ChangeBase {

    /** All lines are shown, changed or not. */
    NONE("All lines"),
    /** Since the chart and its documents were saved. */
    LAST_SAVE("Only what has changed since the last save"),
    /** Since the chart was signed off. */
    SIGN_OFF("Only what has changed since the sign-off");

    private final String word;

    ChangeBase(String word) {
        this.word = word;
    }

    /** Returns what is shown. */
    public String word() {
        return word;
    }
}
