/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * Looks for contacts at which a device cannot go on, pair by pair of stretches, as {@code Transit} does. Pairs that do
 * not taper come first: what they find leaves few of the others to be looked at. A scratch pad for one thread.
 */
final class StopSearch {
    private static final int NONE = -1;

    private final ContactSearch contact;

    /** What was found: stretches, clearances, and how far the leading end has come. */
    int lumenIndex;
    int deviceIndex;
    int worst;
    int nominal;
    long travelled;

    StopSearch(ContactSearch contact) {
        this.contact = contact;
    }

    /** Finds the first contact at which the device cannot go on; false when there is none. */
    boolean findFirst(QuickBore bore, QuickShaft shaft, long travel) {
        lumenIndex = NONE;
        deviceIndex = NONE;
        travelled = travel;
        if (bore.isConstant() && shaft.isConstant()) {
            lookAtRungs(bore, shaft);
        } else if (lookAtConstants(bore.stretches(), shaft.stretches())) {
            lookAtTapers(bore.stretches(), shaft.stretches(), travel);
        }
        return lumenIndex != NONE;
    }

    /** Without tapers the first stretch stops that begins at the rung up to which a part is too thick. */
    private void lookAtRungs(QuickBore bore, QuickShaft shaft) {
        FlatStretches lumen = bore.stretches();
        for (int l = 0; l < lumen.count(); l++) {
            int last = shaft.rungBefore((lumenIndex == NONE ? travelled : travelled + 1) - lumen.from(l), shaft.top());
            if (last >= 0 && bore.mayStop(l, shaft, last)) {
                int rung = 0;
                while (!bore.mayStop(l, shaft, rung)) {
                    rung++;
                }
                int d = shaft.stretch(rung);
                if (lumen.from(l) + shaft.at(rung) < endOfInterest(l, d)) {
                    stopAtConstant(lumen, l, shaft.stretches(), d);
                }
            }
        }
    }

    private void stopAtConstant(FlatStretches lumen, int l, FlatStretches device, int d) {
        worst = lumen.startLow(l) - device.startHigh(d);
        nominal = lumen.startCentre(l) - device.startCentre(d);
        stopAt(l, d, lumen.from(l) + device.from(d));
    }

    /** Looks at pairs that do not taper; tells whether there are others. */
    private boolean lookAtConstants(FlatStretches lumen, FlatStretches device) {
        boolean tapers = false;
        for (int d = 0; d < device.count() && !isTooLate(lumen, device, d); d++) {
            boolean isConstant = device.isConstant(d);
            tapers |= !isConstant;
            for (int l = 0; isConstant && l < lumen.count(); l++) {
                tapers |= !lumen.isConstant(l);
                long meeting = lumen.from(l) + device.from(d);
                if (meeting < travelled && lumen.isConstant(l) && isProved(lumen, l, device, d)
                        && deciding(lumen, l, device, d) < 0) {
                    stopAtConstant(lumen, l, device, d);
                }
            }
        }
        return tapers;
    }

    /** Whether neither a stretch nor any that follows it can stop the device sooner than what was found. */
    private boolean isTooLate(FlatStretches lumen, FlatStretches device, int d) {
        return device.isSorted() && lumen.first() + device.from(d) >= travelled;
    }

    private void lookAtTapers(FlatStretches lumen, FlatStretches device, long travel) {
        for (int d = 0; d < device.count() && !isLater(lumen, device, d); d++) {
            for (int l = 0; l < lumen.count(); l++) {
                long meeting = lumen.from(l) + device.from(d);
                if (meeting < travel && meeting <= travelled && isProved(lumen, l, device, d)
                        && !(lumen.isConstant(l) && device.isConstant(d))) {
                    lookAtTaper(lumen, l, device, d, travel);
                }
            }
        }
    }

    private boolean isLater(FlatStretches lumen, FlatStretches device, int d) {
        return device.isSorted() && lumen.first() + device.from(d) > travelled;
    }

    private void lookAtTaper(FlatStretches lumen, int l, FlatStretches device, int d, long travel) {
        contact.of(lumen, l, device, d, travel);
        if (contact.firstOverlap(endOfInterest(l, d))) {
            worst = contact.worst(contact.x, contact.s);
            nominal = contact.nominal(contact.x, contact.s);
            stopAt(l, d, contact.x + contact.s);
        }
    }

    /** Of two contacts at the same travel the one counts whose pair comes first. */
    private long endOfInterest(int l, int d) {
        if (lumenIndex == NONE) {
            return FlatStretches.NOWHERE;
        }
        boolean comesFirst = d < deviceIndex || d == deviceIndex && l < lumenIndex;
        return comesFirst ? travelled + 1 : travelled;
    }

    private void stopAt(int l, int d, long atTravel) {
        lumenIndex = l;
        deviceIndex = d;
        travelled = atTravel;
    }

    /** Whether there is any contact at which the device cannot go on. */
    boolean findAny(FlatStretches lumen, FlatStretches device, long travel) {
        for (int d = 0; d < device.count(); d++) {
            for (int l = 0; l < lumen.count(); l++) {
                if (lumen.from(l) + device.from(d) < travel && isProved(lumen, l, device, d)
                        && overlaps(lumen, l, device, d, travel)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean overlaps(FlatStretches lumen, int l, FlatStretches device, int d, long travel) {
        if (lumen.isConstant(l) && device.isConstant(d)) {
            return deciding(lumen, l, device, d) < 0;
        }
        contact.of(lumen, l, device, d, travel);
        return contact.overlaps();
    }

    private static boolean isProved(FlatStretches lumen, int l, FlatStretches device, int d) {
        return lumen.isProved(l) && device.isProved(d);
    }

    /** The clearance that must be negative for a block: the nominal one, or the best where a centre is assumed. */
    private static int deciding(FlatStretches lumen, int l, FlatStretches device, int d) {
        return lumen.isAssumed(l) || device.isAssumed(d) ? lumen.startHigh(l) - device.startLow(d)
                : lumen.startCentre(l) - device.startCentre(d);
    }
}
