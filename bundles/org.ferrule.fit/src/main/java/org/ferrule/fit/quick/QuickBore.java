/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/** A lumen as plain numbers, with what is narrowest of each stretch. */
final class QuickBore {
    private static final int WIDTHS = 4;

    private final FlatStretches stretches;
    private final int[] widths;
    private final boolean isPlain;

    QuickBore(FlatStretches s) {
        stretches = s;
        widths = new int[s.count() * WIDTHS];
        for (int i = 0; i < s.count(); i++) {
            boolean start = isNarrowAtStart(i);
            widths[i * WIDTHS] = start ? s.startLow(i) : s.endLow(i);
            widths[i * WIDTHS + 1] = start ? s.startCentre(i) : s.endCentre(i);
            widths[i * WIDTHS + 2] = Math.min(s.startCentre(i), s.endCentre(i));
            widths[i * WIDTHS + 3] = Math.min(s.startHigh(i), s.endHigh(i));
        }
        isPlain = s.count() == 1 && s.isConstant(0) && s.isProved(0)
                && s.firstUnknown() == FlatStretches.NOWHERE;
    }

    FlatStretches stretches() {
        return stretches;
    }

    /** Whether it is one stretch of one known diameter. */
    boolean isPlain() {
        return isPlain;
    }

    /** The least low end of a stretch. */
    int low(int i) {
        return widths[i * WIDTHS];
    }

    /** The centre where the low end is least. */
    int centre(int i) {
        return widths[i * WIDTHS + 1];
    }

    int leastCentre(int i) {
        return widths[i * WIDTHS + 2];
    }

    int leastHigh(int i) {
        return widths[i * WIDTHS + 3];
    }

    /** Whether a stretch is as narrow where it starts as anywhere. */
    boolean isNarrowAtStart(int i) {
        return stretches.startLow(i) <= stretches.endLow(i);
    }

    /** Whether a taper is as narrow at both ends: then the order in which its ends are looked at matters. */
    boolean isNarrowTwice(int i) {
        return !stretches.isConstant(i) && stretches.startLow(i) == stretches.endLow(i);
    }
}
