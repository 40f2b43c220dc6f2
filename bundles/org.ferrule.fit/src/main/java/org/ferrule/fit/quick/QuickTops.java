/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/** The tips and the widest places of devices side by side, in one phase. */
final class QuickTops {
    static final long NEVER = Long.MAX_VALUE;
    private static final int NOTHING = Integer.MIN_VALUE;

    final int[] high;
    final int[] centre;
    final int[] name;
    /** What must not lie above a lumen, as {@link QuickShaft} has it at its last rung. */
    final int[] statedCentre;
    final int[] assumedLow;
    final int[] largestLow;
    /** Whether a part that lies above is sure to be stopped. */
    final boolean[] constant;
    /** What must lie below the travel, less the station where the lumen begins; the device's own travel is off. */
    final long[] last;
    /**
     * What must not lie above the travel, less the station where the narrowest stretch ends; the device's own travel is
     * off. The second one where that stretch tapers.
     */
    final long[] end;
    final long[] endInTaper;
    /**
     * What must lie below the travel, less the station where the lumen begins, for something unknown to enter it; the
     * device's own travel is off.
     */
    final long[] firstUnknown;
    /** The leading end of the first stretch. */
    final int[] tipHigh;
    final int[] tipCentre;
    final int[] tipName;
    /** What is stopped at once where it lies above the entry of a lumen. */
    final int[] tipStatedCentre;
    final int[] tipAssumedLow;
    final int[] tipLow;

    QuickTops(int count) {
        high = new int[count];
        centre = new int[count];
        name = new int[count];
        statedCentre = new int[count];
        assumedLow = new int[count];
        largestLow = new int[count];
        constant = new boolean[count];
        last = new long[count];
        end = new long[count];
        endInTaper = new long[count];
        firstUnknown = new long[count];
        tipHigh = new int[count];
        tipCentre = new int[count];
        tipName = new int[count];
        tipStatedCentre = new int[count];
        tipAssumedLow = new int[count];
        tipLow = new int[count];
    }

    /** Leaves a device out, which has to be looked at by itself. */
    void leaveOut(int i) {
        last[i] = NEVER;
        firstUnknown[i] = NEVER;
        tipStatedCentre[i] = NOTHING;
        tipAssumedLow[i] = NOTHING;
        tipLow[i] = NOTHING;
    }

    /** Puts in a device of which all is known. */
    void set(int i, QuickShaft shaft, long ownTravel) {
        int top = shaft.top();
        setStops(i, shaft);
        high[i] = shaft.high(top);
        centre[i] = shaft.centre(top);
        constant[i] = shaft.isConstant();
        name[i] = shaft.stretches().name(shaft.widest(top));
        last[i] = shaft.at(top) - ownTravel;
        end[i] = shaft.widestEnd() - ownTravel;
        endInTaper[i] = shaft.widestTo() - ownTravel;
        firstUnknown[i] = NEVER;
        setTip(i, shaft.stretches(), shaft.stretch(0), shaft.beginsAlone());
    }

    /**
     * Puts in a device of which something is not known.
     *
     * @param from how far it must travel for that to enter a lumen, less its own travel
     */
    void setUnknown(int i, QuickShaft shaft, long from) {
        leaveOut(i);
        setStops(i, shaft);
        firstUnknown[i] = from;
    }

    private void setStops(int i, QuickShaft shaft) {
        boolean any = shaft.top() >= 0;
        statedCentre[i] = any ? shaft.statedCentre(shaft.top()) : NOTHING;
        assumedLow[i] = any ? shaft.assumedLow(shaft.top()) : NOTHING;
        largestLow[i] = any ? shaft.largestLow(shaft.top()) : NOTHING;
    }

    private void setTip(int i, FlatStretches stretches, int first, boolean isAlone) {
        boolean stops = isAlone && stretches.isProved(first);
        boolean assumed = stretches.isAssumed(first);
        tipHigh[i] = stretches.startHigh(first);
        tipCentre[i] = stretches.startCentre(first);
        tipName[i] = stretches.name(first);
        tipStatedCentre[i] = stops && !assumed ? stretches.startCentre(first) : NOTHING;
        tipAssumedLow[i] = stops && assumed ? stretches.startLow(first) : NOTHING;
        tipLow[i] = stops ? stretches.startLow(first) : NOTHING;
    }
}
