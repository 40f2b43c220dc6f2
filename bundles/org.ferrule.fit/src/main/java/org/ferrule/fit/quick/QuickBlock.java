/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Inner devices side by side, an array for every property that the cells of most lines need: of a device that passes a
 * lumen in full only the widest place counts. A device that has to be looked at by itself stands there as one that
 * never passes. Immutable.
 */
public final class QuickBlock {
    private static final long NEVER = Long.MAX_VALUE;
    private static final long ALWAYS = Long.MIN_VALUE;

    final int count;
    /** Null where the solver has to be asked. */
    final QuickInner[] inner;
    final int[] kind;
    final long[] kindBit;
    final Tops in;
    final Tops out;
    /** How far beyond a lumen's length a device must go before its edge matters; never for one that does not deploy. */
    final long[] deployedBeyond;
    final long[] statedLength;
    /** The kinds that the one claim speaks of for which a comparison is enough, and what it then says. */
    final long[] claimKinds;
    final int[] claimValue;
    final int[] claimYes;
    final int[] claimNo;
    /** The kinds of which other claims may speak. */
    final long[] otherKinds;
    /** Whether use changes the outline of any. */
    final boolean changes;
    final QuickCommon common;

    /** Widest places in one phase. */
    static final class Tops {
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
         * What must not lie above the travel, less the station where the narrowest stretch ends; the device's own travel
         * is off. The second one where that stretch tapers.
         */
        final long[] end;
        final long[] endInTaper;

        private Tops(int count) {
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
        }

        private void set(int i, QuickShaft shaft, boolean isUsual, long ownTravel) {
            if (!isUsual || !shaft.isKnown()) {
                last[i] = NEVER;
                return;
            }
            high[i] = shaft.high(shaft.top());
            centre[i] = shaft.centre(shaft.top());
            statedCentre[i] = shaft.statedCentre(shaft.top());
            assumedLow[i] = shaft.assumedLow(shaft.top());
            largestLow[i] = shaft.largestLow(shaft.top());
            constant[i] = shaft.isConstant();
            name[i] = shaft.stretches().name(shaft.widest(shaft.top()));
            last[i] = shaft.at(shaft.top()) - ownTravel;
            end[i] = shaft.widestEnd() - ownTravel;
            endInTaper[i] = shaft.widestTo() - ownTravel;
        }
    }

    QuickBlock(List<Optional<QuickInner>> devices, QuickTerms terms) {
        count = devices.size();
        inner = devices.stream().map(d -> d.orElse(null)).toArray(QuickInner[]::new);
        kind = new int[count];
        kindBit = new long[count];
        in = new Tops(count);
        out = new Tops(count);
        deployedBeyond = new long[count];
        statedLength = new long[count];
        claimKinds = new long[count];
        claimValue = new int[count];
        claimYes = new int[count];
        claimNo = new int[count];
        otherKinds = new long[count];
        for (int i = 0; i < count; i++) {
            if (inner[i] == null) {
                in.last[i] = NEVER;
            } else {
                set(i, inner[i], terms);
            }
        }
        changes = Stream.of(inner).anyMatch(device -> device != null && device.out != device.in);
        common = new QuickCommon(this);
    }

    /** How many devices there are. */
    public int size() {
        return count;
    }

    /** The upper end of the diameter where a device is widest going in; only for one that passes whole lumens. */
    public int high(int i) {
        return in.high[i];
    }

    /** The centre of the diameter there. */
    public int centre(int i) {
        return in.centre[i];
    }

    /** Place of the name of the section there among the different names of the device's stretches. */
    public int sectionName(int i) {
        return in.name[i];
    }

    private void set(int i, QuickInner device, QuickTerms terms) {
        long ownTravel = terms.asksForDistance() ? 0 : device.insertableLength;
        boolean isUsual = device.statedLength != QuickInner.NOT_STATED;
        kind[i] = device.kind;
        statedLength[i] = device.statedLength;
        kindBit[i] = device.kindBit;
        in.set(i, device.in, isUsual, ownTravel);
        out.set(i, device.out, isUsual, ownTravel);
        boolean knowsTravel = isUsual || terms.asksForDistance();
        deployedBeyond[i] = !device.deploys ? NEVER : knowsTravel ? -ownTravel : ALWAYS;
        otherKinds[i] = device.claims.kinds();
        device.claims.comparingOnly(device.isWire, device.wire).ifPresent(claim -> {
            claimKinds[i] = claim.kinds();
            claimValue[i] = claim.value();
            claimYes[i] = claim.yes();
            claimNo[i] = claim.no();
            otherKinds[i] = claim.otherKinds();
        });
    }
}
