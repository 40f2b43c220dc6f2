/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * What decides about devices that pass all of a lumen, or do not enter it: where it is narrowest, its entry, and what may
 * stop a device. All in one object, since every cell of a column reads it, and a processor waits for each that is far.
 */
final class BoreExtremes {
    /** Whether every stretch is known, and one is narrowest in one place. */
    final boolean isKnown;
    final boolean isConstant;
    /** Where the first and the last stretch begin. */
    final long firstFrom;
    final long lastFrom;
    /** The first of the narrowest stretches: whether it tapers, where it ends, its figures at its narrow end. */
    final boolean tapers;
    final long narrowTo;
    final int low;
    final int centre;
    final int name;
    /** What stated centres, low ends of assumed ones, and low ends must not exceed, lest a device may be stopped. */
    final int mostCentre;
    final int mostAssumedLow;
    final int mostLow;
    /** The stretch that is met first, where it begins. */
    final int entryLow;
    final int entryCentre;
    final int entryName;
    /** What the same figures of a tip must not exceed to enter. */
    final int mostCentreAtEntry;
    final int mostAssumedLowAtEntry;
    final int mostLowAtEntry;

    BoreExtremes(QuickBore bore) {
        FlatStretches s = bore.stretches();
        boolean any = s.count() > 0;
        int narrowest = all(s).reduce(0, (a, b) -> bore.low(b) < bore.low(a) ? b : a);
        int entry = all(s).reduce(0, (a, b) -> s.from(b) < s.from(a) ? b : a);
        boolean entersAlone = any && all(s).filter(i -> s.from(i) == s.from(entry)).count() == 1;
        isKnown = any && s.firstUnknown() == FlatStretches.NOWHERE && !bore.isNarrowTwice(narrowest);
        isConstant = bore.isConstant();
        firstFrom = any ? s.from(entry) : 0;
        lastFrom = all(s).mapToLong(s::from).max().orElse(0);
        tapers = any && !s.isConstant(narrowest);
        narrowTo = any ? s.to(narrowest) : 0;
        low = any ? bore.low(narrowest) : 0;
        centre = any ? bore.centre(narrowest) : 0;
        name = any ? s.name(narrowest) : 0;
        mostCentre = least(s, i -> s.isProved(i) && !s.isAssumed(i), bore::leastCentre);
        mostAssumedLow = least(s, i -> s.isProved(i) && !s.isAssumed(i), bore::leastHigh);
        mostLow = least(s, i -> s.isProved(i) && s.isAssumed(i), bore::leastHigh);
        entryLow = any ? s.startLow(entry) : 0;
        entryCentre = any ? s.startCentre(entry) : 0;
        entryName = any ? s.name(entry) : 0;
        IntPredicate stated = i -> entersAlone && i == entry && s.isProved(i) && !s.isAssumed(i);
        mostCentreAtEntry = least(s, stated, s::startCentre);
        mostAssumedLowAtEntry = least(s, stated, s::startHigh);
        mostLowAtEntry = least(s, i -> entersAlone && i == entry && s.isProved(i) && s.isAssumed(i), s::startHigh);
    }

    private static IntStream all(FlatStretches s) {
        return IntStream.range(0, s.count());
    }

    private static int least(FlatStretches s, IntPredicate which, IntUnaryOperator width) {
        return all(s).filter(which).map(width).min().orElse(Integer.MAX_VALUE);
    }
}
