/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.stream.IntStream;

/** A lumen as plain numbers, with what is narrowest of each stretch. */
final class QuickBore {
    private static final int WIDTHS = 4;

    private final FlatStretches stretches;
    private final int[] widths;
    private final boolean isConstant;

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
        isConstant = IntStream.range(0, s.count()).allMatch(s::isConstant);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof QuickBore that && stretches.equals(that.stretches);
    }

    @Override
    public int hashCode() {
        return stretches.hashCode();
    }

    FlatStretches stretches() {
        return stretches;
    }

    /** Whether no known stretch tapers. */
    boolean isConstant() {
        return isConstant;
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

    /** Whether any stretch up to a rung of a device may not go on here; sure where neither tapers. */
    boolean mayStop(int i, QuickShaft shaft, int rung) {
        if (!stretches.isProved(i)) {
            return false;
        }
        return stretches.isAssumed(i) ? shaft.largestLow(rung) > leastHigh(i)
                : shaft.statedCentre(rung) > leastCentre(i) || shaft.assumedLow(rung) > leastHigh(i);
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
