/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/** A lumen as plain numbers, with what is narrowest of each stretch. */
final class QuickBore {
    final FlatStretches stretches;
    /** The least low end of each stretch. */
    final int[] low;
    /** The centre at that end. */
    final int[] centre;
    /** The least centre of each stretch. */
    final int[] leastCentre;
    /** The least high end of each stretch. */
    final int[] leastHigh;
    /** Whether a stretch is as narrow where it starts as anywhere. */
    final boolean[] narrowAtStart;
    /** Whether a taper is as narrow at both ends: then the order in which its ends are looked at matters. */
    final boolean[] twice;
    /** Whether it is one stretch of one known diameter. */
    final boolean isPlain;

    QuickBore(FlatStretches s) {
        stretches = s;
        low = new int[s.count];
        centre = new int[s.count];
        leastCentre = new int[s.count];
        leastHigh = new int[s.count];
        narrowAtStart = new boolean[s.count];
        twice = new boolean[s.count];
        for (int i = 0; i < s.count; i++) {
            boolean atEnd = s.endLow[i] < s.startLow[i];
            narrowAtStart[i] = !atEnd;
            low[i] = atEnd ? s.endLow[i] : s.startLow[i];
            centre[i] = atEnd ? s.endCentre[i] : s.startCentre[i];
            leastCentre[i] = Math.min(s.startCentre[i], s.endCentre[i]);
            leastHigh[i] = Math.min(s.startHigh[i], s.endHigh[i]);
            twice[i] = !s.constant[i] && s.startLow[i] == s.endLow[i];
        }
        isPlain = s.count == 1 && s.constant[0] && s.firstUnknown == FlatStretches.NOWHERE;
    }
}
