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
    private int lumenIndex;
    private int deviceIndex;
    private boolean mayBlock;

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
        hasPlace = false;
        travelled = travel;
        findTightest(bore, shaft, travel);
        if (mayBlock && findStop(bore, shaft, travel)) {
            return BLOCKED;
        }
        if (unstatedLength || meetsUnknown(bore, shaft, travel)) {
            return UNKNOWN;
        }
        if (lumenIndex == NONE) {
            return FITS;
        }
        if (!isReached(bore, shaft, travel)) {
            searchTightest(bore, shaft, travel);
        }
        place(bore, shaft);
        return verdict(required);
    }

    /** The verdict of a passage alone. */
    int verdict(QuickBore bore, QuickShaft shaft, long travel, boolean unstatedLength, int required) {
        findTightest(bore, shaft, travel);
        if (mayBlock && isBlocked(bore, shaft, travel)) {
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
        int least = Integer.MAX_VALUE;
        int leastAt = NONE;
        int leastOf = NONE;
        int leastNominal = 0;
        boolean overlaps = false;
        for (int l = 0; l < bore.low.length; l++) {
            int rung = shaft.rungsBefore(travel - bore.stretches.from[l]) - 1;
            if (rung >= 0) {
                int margin = bore.low[l] - shaft.high[rung];
                if (margin < least || margin == least && shaft.widest[rung] < leastOf) {
                    least = margin;
                    leastAt = l;
                    leastOf = shaft.widest[rung];
                    leastNominal = bore.centre[l] - shaft.centre[rung];
                }
                overlaps |= margin < 0 && mayBlock(bore, l, shaft, rung);
            }
        }
        worst = least;
        nominal = leastNominal;
        lumenIndex = leastAt;
        deviceIndex = leastOf;
        mayBlock = overlaps;
    }

    private static boolean mayBlock(QuickBore bore, int l, QuickShaft shaft, int rung) {
        if (!bore.stretches.proved[l]) {
            return false;
        }
        return bore.stretches.assumed[l] ? shaft.largestLow[rung] > bore.leastHigh[l]
                : shaft.statedCentre[rung] > bore.leastCentre[l] || shaft.assumedLow[rung] > bore.leastHigh[l];
    }

    private static boolean meetsUnknown(QuickBore bore, QuickShaft shaft, long travel) {
        return bore.stretches.first + shaft.stretches.firstUnknown < travel
                || bore.stretches.firstUnknown + shaft.stretches.first < travel;
    }

    /** Whether the pair found meets where it is narrowest and widest, so that the bound is the clearance. */
    private boolean isReached(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches;
        FlatStretches device = shaft.stretches;
        if (device.constant[deviceIndex]) {
            return bore.narrowAtStart[lumenIndex]
                    || lumen.to[lumenIndex] + device.from[deviceIndex] <= travel;
        }
        if (lumen.constant[lumenIndex] && device.startHigh[deviceIndex] >= device.endHigh[deviceIndex]) {
            return true;
        }
        return !bore.twice[lumenIndex] && lumen.to[lumenIndex] + device.to[deviceIndex] <= travel;
    }

    /** Looks at every pair of stretches, as the solver does. */
    private void searchTightest(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches;
        FlatStretches device = shaft.stretches;
        int least = Integer.MAX_VALUE;
        for (int d = 0; d < device.count; d++) {
            for (int l = 0; l < lumen.count; l++) {
                if (lumen.from[l] + device.from[d] < travel
                        && bore.low[l] - Math.max(device.startHigh[d], device.endHigh[d]) < least) {
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

    private void place(QuickBore bore, QuickShaft shaft) {
        hasPlace = true;
        lumenName = bore.stretches.name[lumenIndex];
        deviceName = shaft.stretches.name[deviceIndex];
    }

    private static int deciding(FlatStretches lumen, int l, FlatStretches device, int d) {
        return lumen.assumed[l] || device.assumed[d] ? lumen.startHigh[l] - device.startLow[d]
                : lumen.startCentre[l] - device.startCentre[d];
    }

    private static boolean isPlain(FlatStretches lumen, int l, FlatStretches device, int d) {
        return lumen.constant[l] && device.constant[d];
    }

    /** Finds the first contact at which the device cannot go on. */
    private boolean findStop(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches;
        FlatStretches device = shaft.stretches;
        long first = travel;
        for (int d = 0; d < device.count; d++) {
            for (int l = 0; l < lumen.count; l++) {
                long meeting = lumen.from[l] + device.from[d];
                if (meeting < first && lumen.proved[l] && device.proved[d]) {
                    first = firstOverlap(lumen, l, device, d, travel, first);
                }
            }
        }
        if (!hasPlace) {
            return false;
        }
        travelled = first;
        place(bore, shaft);
        return true;
    }

    private long firstOverlap(FlatStretches lumen, int l, FlatStretches device, int d, long travel, long before) {
        if (isPlain(lumen, l, device, d)) {
            if (deciding(lumen, l, device, d) >= 0) {
                return before;
            }
            worst = lumen.startLow[l] - device.startHigh[d];
            nominal = lumen.startCentre[l] - device.startCentre[d];
            stopAt(l, d);
            return lumen.from[l] + device.from[d];
        }
        contact.of(lumen, l, device, d, travel);
        if (!contact.firstOverlap(hasPlace ? before : FlatStretches.NOWHERE)) {
            return before;
        }
        worst = contact.worst(contact.x, contact.s);
        nominal = contact.nominal(contact.x, contact.s);
        stopAt(l, d);
        return contact.x + contact.s;
    }

    private void stopAt(int l, int d) {
        hasPlace = true;
        lumenIndex = l;
        deviceIndex = d;
    }

    private boolean isBlocked(QuickBore bore, QuickShaft shaft, long travel) {
        FlatStretches lumen = bore.stretches;
        FlatStretches device = shaft.stretches;
        for (int d = 0; d < device.count; d++) {
            for (int l = 0; l < lumen.count; l++) {
                if (lumen.from[l] + device.from[d] < travel && lumen.proved[l] && device.proved[d]
                        && overlaps(lumen, l, device, d, travel)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean overlaps(FlatStretches lumen, int l, FlatStretches device, int d, long travel) {
        if (isPlain(lumen, l, device, d)) {
            return deciding(lumen, l, device, d) < 0;
        }
        contact.of(lumen, l, device, d, travel);
        return contact.overlaps();
    }
}
