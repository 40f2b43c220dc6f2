/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * A lumen as plain numbers, with what is narrowest of each stretch, and of the whole lumen: of a device that passes all
 * of it only the narrowest stretch decides.
 */
final class QuickBore {
    private static final int WIDTHS = 4;

    private final FlatStretches stretches;
    private final int[] widths;
    private final boolean isConstant;
    private final boolean isKnown;

    /** The first of the narrowest stretches. */
    final int narrowest;
    /** The stretch that is met first. */
    final int entry;
    /** Where the last stretch begins. */
    final long lastFrom;
    /** What stated centres, low ends of assumed ones, and low ends must not exceed, lest a device may be stopped. */
    final int mostCentre;
    final int mostAssumedLow;
    final int mostLow;
    /** The same for the tip of a device at the entry; whatever exceeds it is stopped there. */
    final int mostCentreAtEntry;
    final int mostAssumedLowAtEntry;
    final int mostLowAtEntry;

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
        narrowest = IntStream.range(0, s.count()).reduce(0, (a, b) -> low(b) < low(a) ? b : a);
        lastFrom = IntStream.range(0, s.count()).mapToLong(s::from).max().orElse(0);
        mostCentre = least(i -> s.isProved(i) && !s.isAssumed(i), this::leastCentre);
        mostAssumedLow = least(i -> s.isProved(i) && !s.isAssumed(i), this::leastHigh);
        mostLow = least(i -> s.isProved(i) && s.isAssumed(i), this::leastHigh);
        entry = IntStream.range(0, s.count()).reduce(0, (a, b) -> s.from(b) < s.from(a) ? b : a);
        boolean stops = s.count() > 0 && s.isProved(entry)
                && IntStream.range(0, s.count()).filter(i -> s.from(i) == s.from(entry)).count() == 1;
        mostCentreAtEntry = stops && !s.isAssumed(entry) ? s.startCentre(entry) : Integer.MAX_VALUE;
        mostAssumedLowAtEntry = stops && !s.isAssumed(entry) ? s.startHigh(entry) : Integer.MAX_VALUE;
        mostLowAtEntry = stops && s.isAssumed(entry) ? s.startHigh(entry) : Integer.MAX_VALUE;
        isKnown = s.count() > 0 && s.firstUnknown() == FlatStretches.NOWHERE && !isNarrowTwice(narrowest);
    }

    private int least(IntPredicate which, IntUnaryOperator width) {
        return IntStream.range(0, stretches.count()).filter(which).map(width).min().orElse(Integer.MAX_VALUE);
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

    /** Whether every stretch is known, so that the narrowest one decides for a device that passes all of them. */
    boolean isKnown() {
        return isKnown;
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
