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

    final FlatStretches stretches;
    final int rungs;
    /** Where each rung stands. */
    final long[] at;
    /** The largest high end up to each rung. */
    final int[] high;
    /** The first stretch, in their own order, that has it. */
    final int[] widest;
    /** The centre where that stretch is widest. */
    final int[] centre;
    /** The largest centre up to each rung of stretches with a stated centre; unproved ones overlap with nothing. */
    final int[] statedCentre;
    /** The largest low end up to each rung of stretches with an assumed centre. */
    final int[] assumedLow;
    /** The largest low end up to each rung. */
    final int[] largestLow;

    QuickShaft(FlatStretches s) {
        stretches = s;
        rungs = s.count;
        at = new long[rungs];
        high = new int[rungs];
        widest = new int[rungs];
        centre = new int[rungs];
        statedCentre = new int[rungs];
        assumedLow = new int[rungs];
        largestLow = new int[rungs];
        int[] order = IntStream.range(0, s.count).boxed().sorted(Comparator.comparingLong(i -> s.from[i]))
                .mapToInt(i -> i).toArray();
        for (int rung = 0; rung < rungs; rung++) {
            fill(rung, order[rung]);
        }
    }

    private void fill(int rung, int i) {
        FlatStretches s = stretches;
        at[rung] = s.from[i];
        boolean atEnd = s.endHigh[i] > s.startHigh[i];
        int highHere = atEnd ? s.endHigh[i] : s.startHigh[i];
        boolean isWidest = rung == 0 || highHere > high[rung - 1]
                || highHere == high[rung - 1] && i < widest[rung - 1];
        high[rung] = isWidest ? highHere : high[rung - 1];
        widest[rung] = isWidest ? i : widest[rung - 1];
        centre[rung] = !isWidest ? centre[rung - 1] : atEnd ? s.endCentre[i] : s.startCentre[i];
        int lowHere = s.proved[i] ? Math.max(s.startLow[i], s.endLow[i]) : NOTHING;
        int centreHere = s.proved[i] ? Math.max(s.startCentre[i], s.endCentre[i]) : NOTHING;
        statedCentre[rung] = larger(statedCentre, rung, s.assumed[i] ? NOTHING : centreHere);
        assumedLow[rung] = larger(assumedLow, rung, s.assumed[i] ? lowHere : NOTHING);
        largestLow[rung] = larger(largestLow, rung, lowHere);
    }

    private static int larger(int[] running, int rung, int here) {
        return rung == 0 ? here : Math.max(running[rung - 1], here);
    }

    /** How many rungs lie before a station. */
    int rungsBefore(long station) {
        int before = rungs;
        while (before > 0 && at[before - 1] >= station) {
            before--;
        }
        return before;
    }
}
