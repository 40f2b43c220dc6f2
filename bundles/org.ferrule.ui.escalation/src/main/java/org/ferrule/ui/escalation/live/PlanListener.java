/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

/** Hears of a plan that follows its case, on the display's thread. */
@FunctionalInterface
public interface PlanListener {

    /** There is another plan, or the one that is shown became stale, or something else is wrong than before. */
    void planChanged();

    /** What the order of the plan hangs on is known now; the plan is the same. */
    default void orderExplained() {
        // most show the plan alone
    }
}
