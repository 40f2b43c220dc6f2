/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;

/** How large the lettering of ladders is: a setting of its own, since a ladder is read from further off than a form. */
final class LadderSize {

    /** The sizes to choose from, in points. */
    static final List<Integer> POINTS = List.of(10, 12, 14, 17, 20, 24);

    private static final String NODE = "org.ferrule.ui.escalation";
    private static final String KEY = "ladder.points";
    private static final int FIRST = 14;

    private LadderSize() {
    }

    /** Returns the size that was chosen last. */
    static int points() {
        int chosen = node().getInt(KEY, FIRST);
        return POINTS.contains(chosen) ? chosen : FIRST;
    }

    /** Chooses the next larger or smaller size, if there is one. */
    static void step(int step) {
        int place = POINTS.indexOf(points()) + step;
        if (place >= 0 && place < POINTS.size()) {
            node().putInt(KEY, POINTS.get(place));
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
