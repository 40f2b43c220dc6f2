/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

/** How well a need is covered, best first. */
public enum Readiness {
    /** All units are there, and more behind them. */
    READY,
    /** All units are there, and no other usable one of these items is left. */
    LAST_ONE,
    /** All units are there, but some of them are of items that are a second choice. */
    SUBSTITUTE,
    /** Too few may be used on the day of the case; with those that expire before it there would be enough. */
    EXPIRED,
    /** Too few are there. */
    MISSING;

    /** Returns whether all units are there. */
    public boolean isCovered() {
        return compareTo(SUBSTITUTE) <= 0;
    }
}
