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
    private static final long NEVER = QuickTops.NEVER;
    private static final long ALWAYS = Long.MIN_VALUE;

    final int count;
    /** Null where the solver has to be asked. */
    final QuickInner[] inner;
    final int[] kind;
    final long[] kindBit;
    final QuickTops in;
    final QuickTops out;
    /** How far beyond a lumen's length a device must go before its edge matters; never for one that does not deploy. */
    final long[] deployedBeyond;
    /** The stated length of a device with nothing else that a check of lengths finds; none for others. */
    final long[] enoughLength;
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

    QuickBlock(List<Optional<QuickInner>> devices, QuickTerms terms) {
        count = devices.size();
        inner = devices.stream().map(d -> d.orElse(null)).toArray(QuickInner[]::new);
        kind = new int[count];
        kindBit = new long[count];
        in = new QuickTops(count);
        out = new QuickTops(count);
        deployedBeyond = new long[count];
        enoughLength = new long[count];
        claimKinds = new long[count];
        claimValue = new int[count];
        claimYes = new int[count];
        claimNo = new int[count];
        otherKinds = new long[count];
        for (int i = 0; i < count; i++) {
            if (inner[i] == null) {
                in.leaveOut(i);
                out.leaveOut(i);
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

    /**
     * The upper ends of the devices' diameters at the place that decides.
     *
     * @param atTip whether that is the tip, and not where a device is widest
     */
    public int[] high(boolean atTip) {
        return (atTip ? in.tipHigh : in.high).clone();
    }

    /** The centres of the diameters there. */
    public int[] centre(boolean atTip) {
        return (atTip ? in.tipCentre : in.centre).clone();
    }

    /** Places of the names of the sections there among the different names of each device's stretches. */
    public int[] sectionName(boolean atTip) {
        return (atTip ? in.tipName : in.name).clone();
    }

    private static void set(QuickTops tops, int i, QuickInner device, QuickShaft shaft, QuickTerms terms) {
        long ownTravel = terms.asksForDistance() ? 0 : device.insertableLength;
        boolean isStated = device.statedLength != QuickInner.NOT_STATED;
        if (isStated && shaft.isKnown()) {
            tops.set(i, shaft, ownTravel);
        } else if (isStated) {
            tops.setUnknown(i, shaft, shaft.stretches().firstUnknown() - ownTravel);
        } else if (!terms.reachStated()) {
            tops.setUnknown(i, shaft, ALWAYS);
        } else {
            tops.leaveOut(i);
        }
    }

    private void set(int i, QuickInner device, QuickTerms terms) {
        long ownTravel = terms.asksForDistance() ? 0 : device.insertableLength;
        boolean isUsual = device.statedLength != QuickInner.NOT_STATED;
        kind[i] = device.kind;
        boolean isLengthAll = isUsual && device.port == Passing.FITS;
        enoughLength[i] = isLengthAll ? device.statedLength : QuickInner.NOT_STATED;
        kindBit[i] = device.kindBit;
        set(in, i, device, device.in, terms);
        set(out, i, device, device.out, terms);
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
