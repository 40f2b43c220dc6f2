/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * The geometry of passages in plain numbers: what {@code PassageCheck} finds of a device that passes alone, without
 * reasons. A scratch pad for one thread: what was found last stands in its fields.
 *
 * <p>
 * M(x), the running largest profile at station x of the lumen, is read from the ladder of the device at the travel less
 * x. Only where that leaves an overlap possible, or where a taper decides that has not passed in full, pairs of
 * stretches are looked at.
 */
final class Passing {
    static final int FITS = 0;
    static final int TIGHT = 1;
    static final int UNKNOWN = 2;
    static final int BLOCKED = 3;
    /** The rule set has no clearance for the pair, and one is needed. */
    static final int NO_RULE = 4;
    /** Stands for a clearance that no rule requires. */
    static final int NOT_RULED = Integer.MIN_VALUE;

    private static final int NONE = -1;

    private final ContactSearch contact = new ContactSearch();
    private final StopSearch stop = new StopSearch(contact);
    private int lumenIndex;
    private int deviceIndex;
    private boolean mayBlock;
    private boolean surelyBlocks;

    /** Whether there is a place that decides; the fields below are of that place. */
    boolean hasPlace;
    int worst;
    int nominal;
    int lumenName;
    int deviceName;
    /** How far the leading end has come where it stops; the whole travel when it does not. */
    long travelled;

    /** Looks at a passage with the place that decides; returns the verdict. */
    int look(QuickBore bore, QuickShaft shaft, long travel, boolean unstatedLength, int required) {
        findTightest(bore, shaft, travel);
        travelled = travel;
        if (mayBlock && lookForStop(bore, shaft, travel)) {
            return BLOCKED;
        }
        hasPlace = false;
        if (unstatedLength || meetsUnknown(bore, shaft, travel)) {
            return UNKNOWN;
        }
        if (lumenIndex == NONE) {
            return FITS;
        }
        if (!isReached(bore, shaft, travel)) {
            searchTightest(bore, shaft, travel);
        }
        place(bore, lumenIndex, shaft, deviceIndex);
        return verdict(required);
    }

    /** Looks for the place that stops a device which some part of the lumen is too narrow for; false when none does. */
    boolean lookForStop(QuickBore bore, QuickShaft shaft, long travel) {
        boolean found = stop.findFirst(bore, shaft, travel);
        if (found) {
            placeStop(bore, shaft);
        }
        return found;
    }

    /** Whether such a device is stopped anywhere. */
    boolean isStopped(QuickBore bore, QuickShaft shaft, long travel) {
        return stop.findAny(bore.stretches(), shaft.stretches(), travel);
    }

    private void placeStop(QuickBore bore, QuickShaft shaft) {
        worst = stop.worst;
        nominal = stop.nominal;
        travelled = stop.travelled;
        place(bore, stop.lumenIndex, shaft, stop.deviceIndex);
    }

    /** The verdict of a passage alone. */
    int verdict(QuickBore bore, QuickShaft shaft, long travel, boolean unstatedLength, int required) {
        findTightest(bore, shaft, travel);
        if (surelyBlocks || mayBlock && isStopped(bore, shaft, travel)) {
            return BLOCKED;
        }
        if (unstatedLength || meetsUnknown(bore, shaft, travel)) {
            return UNKNOWN;
        }
        if (lumenIndex == NONE) {
            return FITS;
        }
        if (worst < required && !isReached(bore, shaft, travel)) {
            searchTightest(bore, shaft, travel);
        }
        return verdict(required);
    }

    private int verdict(int required) {
        return required == NOT_RULED ? NO_RULE : worst >= required ? FITS : TIGHT;
    }

    /** Finds a bound of the least clearance, and the first pair of stretches that has it. */
    private void findTightest(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches();
        int least = Integer.MAX_VALUE;
        int leastAt = NONE;
        int leastOf = NONE;
        int leastNominal = 0;
        boolean overlaps = false;
        boolean surely = false;
        int rung = shaft.top();
        for (int l = 0; l < lumen.count(); l++) {
            rung = shaft.rungBefore(travel - lumen.from(l), lumen.isSorted() ? rung : shaft.top());
            if (rung >= 0) {
                int margin = bore.low(l) - shaft.high(rung);
                if (margin < least || margin == least && shaft.widest(rung) < leastOf) {
                    least = margin;
                    leastAt = l;
                    leastOf = shaft.widest(rung);
                    leastNominal = bore.centre(l) - shaft.centre(rung);
                }
                if (margin < 0 && bore.mayStop(l, shaft, rung)) {
                    overlaps = true;
                    surely |= shaft.isConstant() && lumen.isConstant(l);
                }
            }
        }
        worst = least;
        nominal = leastNominal;
        lumenIndex = leastAt;
        deviceIndex = leastOf;
        mayBlock = overlaps;
        surelyBlocks = surely;
    }

    private static boolean meetsUnknown(QuickBore bore, QuickShaft shaft, long travel) {
        return bore.stretches().first() + shaft.stretches().firstUnknown() < travel
                || bore.stretches().firstUnknown() + shaft.stretches().first() < travel;
    }

    /** Whether the pair found meets where it is narrowest and widest, so that the bound is the clearance. */
    private boolean isReached(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches();
        FlatStretches device = shaft.stretches();
        if (device.isConstant(deviceIndex)) {
            return bore.isNarrowAtStart(lumenIndex) || lumen.to(lumenIndex) + device.from(deviceIndex) <= travel;
        }
        if (lumen.isConstant(lumenIndex) && device.startHigh(deviceIndex) >= device.endHigh(deviceIndex)) {
            return true;
        }
        return !bore.isNarrowTwice(lumenIndex) && lumen.to(lumenIndex) + device.to(deviceIndex) <= travel;
    }

    /** Looks at every pair of stretches, as the solver does. */
    private void searchTightest(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches();
        FlatStretches device = shaft.stretches();
        int least = Integer.MAX_VALUE;
        for (int d = 0; d < device.count(); d++) {
            int high = Math.max(device.startHigh(d), device.endHigh(d));
            for (int l = 0; l < lumen.count(); l++) {
                if (bore.low(l) - high < least && lumen.from(l) + device.from(d) < travel) {
                    contact.of(lumen, l, device, d, travel);
                    int here = contact.tightest();
                    if (here < least) {
                        least = here;
                        lumenIndex = l;
                        deviceIndex = d;
                        nominal = contact.nominal(contact.x, contact.s);
                    }
                }
            }
        }
        worst = least;
    }

    private void place(QuickBore bore, int l, QuickShaft shaft, int d) {
        hasPlace = true;
        lumenName = bore.stretches().name(l);
        deviceName = shaft.stretches().name(d);
    }
}
