/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The outline of a device as plain numbers, with its running largest profile: what holds of all stretches that have
 * passed a station of a lumen is read at one rung of a ladder. Rungs stand where stretches begin, from the end that
 * leads.
 */
final class QuickShaft {
    /** A diameter that overlaps with none. */
    private static final int NOTHING = Integer.MIN_VALUE;

    private static final int RUNNING = 8;
    private static final int WIDEST = 1;
    private static final int CENTRE = 2;
    private static final int STATED_CENTRE = 3;
    private static final int ASSUMED_LOW = 4;
    private static final int LARGEST_LOW = 5;
    private static final int STRETCH = 6;

    private final FlatStretches stretches;
    private final long[] at;
    private final int[] running;
    private final boolean isConstant;

    QuickShaft(FlatStretches s) {
        stretches = s;
        at = new long[s.count()];
        running = new int[s.count() * RUNNING];
        int[] order = order(s);
        for (int rung = 0; rung < order.length; rung++) {
            fill(rung, order[rung]);
        }
        isConstant = IntStream.range(0, s.count()).allMatch(s::isConstant);
    }

    private static int[] order(FlatStretches s) {
        IntStream all = IntStream.range(0, s.count());
        return s.isSorted() ? all.toArray()
                : all.boxed().sorted(Comparator.comparingLong(s::from)).mapToInt(i -> i).toArray();
    }

    private void fill(int rung, int i) {
        FlatStretches s = stretches;
        int r = rung * RUNNING;
        at[rung] = s.from(i);
        boolean atEnd = s.endHigh(i) > s.startHigh(i);
        int highHere = atEnd ? s.endHigh(i) : s.startHigh(i);
        boolean isWidest = rung == 0 || highHere > high(rung - 1) || highHere == high(rung - 1) && i < widest(rung - 1);
        running[r] = isWidest ? highHere : high(rung - 1);
        running[r + WIDEST] = isWidest ? i : widest(rung - 1);
        running[r + CENTRE] = !isWidest ? centre(rung - 1) : atEnd ? s.endCentre(i) : s.startCentre(i);
        int lowHere = s.isProved(i) ? Math.max(s.startLow(i), s.endLow(i)) : NOTHING;
        int centreHere = s.isProved(i) ? Math.max(s.startCentre(i), s.endCentre(i)) : NOTHING;
        running[r + STATED_CENTRE] = larger(r + STATED_CENTRE, s.isAssumed(i) ? NOTHING : centreHere);
        running[r + ASSUMED_LOW] = larger(r + ASSUMED_LOW, s.isAssumed(i) ? lowHere : NOTHING);
        running[r + STRETCH] = i;
        running[r + LARGEST_LOW] = larger(r + LARGEST_LOW, lowHere);
    }

    private int larger(int place, int here) {
        return place < RUNNING ? here : Math.max(running[place - RUNNING], here);
    }

    FlatStretches stretches() {
        return stretches;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof QuickShaft that && stretches.equals(that.stretches);
    }

    @Override
    public int hashCode() {
        return stretches.hashCode();
    }

    /** Whether every stretch is known, and there is one. */
    boolean isKnown() {
        return at.length > 0 && stretches.firstUnknown() == FlatStretches.NOWHERE;
    }

    /** Whether no known stretch tapers. */
    boolean isConstant() {
        return isConstant;
    }

    /** The last rung; -1 where nothing is known. */
    int top() {
        return at.length - 1;
    }

    /** Where a rung stands. */
    long at(int rung) {
        return at[rung];
    }

    /**
     * The last rung before a station; -1 for none.
     *
     * @param start a rung that is not before it, to look down from
     */
    int rungBefore(long station, int start) {
        int rung = start;
        while (rung >= 0 && at[rung] >= station) {
            rung--;
        }
        return rung;
    }

    /** The largest high end up to a rung. */
    int high(int rung) {
        return running[rung * RUNNING];
    }

    /** The first stretch, in their own order, that is as wide. */
    int widest(int rung) {
        return running[rung * RUNNING + WIDEST];
    }

    /** The centre where that stretch is widest. */
    int centre(int rung) {
        return running[rung * RUNNING + CENTRE];
    }

    /** The largest centre up to a rung of stretches with a stated centre; those that prove no overlap do not count. */
    int statedCentre(int rung) {
        return running[rung * RUNNING + STATED_CENTRE];
    }

    /** The largest low end up to a rung of stretches with an assumed centre. */
    int assumedLow(int rung) {
        return running[rung * RUNNING + ASSUMED_LOW];
    }

    /** The largest low end up to a rung. */
    int largestLow(int rung) {
        return running[rung * RUNNING + LARGEST_LOW];
    }

    /** The stretch that begins at a rung. */
    int stretch(int rung) {
        return running[rung * RUNNING + STRETCH];
    }

    /** Whether one stretch leads, and no other begins beside it. */
    boolean beginsAlone() {
        return at.length == 1 || at.length > 1 && at[0] < at[1];
    }

    /** Where the widest stretch ends. */
    long widestTo() {
        return stretches.to(widest(top()));
    }

    /** Up to where the widest stretch must have passed before its widest end has; nothing to wait for when that leads. */
    long widestEnd() {
        int widest = widest(top());
        return stretches.startHigh(widest) < stretches.endHigh(widest) ? stretches.to(widest)
                : -FlatStretches.NOWHERE;
    }
}
