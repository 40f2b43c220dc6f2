/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What the devices of a block have in common: the extremes of what stands in its arrays. Where the extremes pass a lumen
 * and the claims agree, all cells of the block have the same marks, and only their clearances differ.
 */
final class QuickCommon {
    /** Stands for marks that are not the same for all. */
    static final int NONE = -1;

    private final int kind;
    private final boolean isAlike;
    private final long claimKinds;
    private final int claimYes;
    private final int claimNo;
    private final int leastClaim;
    private final int mostClaim;
    private final long otherKinds;
    private final long kindBit;
    private final long leastLength;
    private final long firstDeployed;
    private final long lastDeployed;
    private final Most in;
    private final Most out;

    /** The extremes of the widest places in one phase. */
    private record Most(long last, long end, long endInTaper, int high, int statedCentre, int assumedLow,
            int largestLow) {

        static Most of(QuickBlock.Tops tops) {
            return new Most(most(tops.last), most(tops.end), most(tops.endInTaper), most(tops.high),
                    most(tops.statedCentre), most(tops.assumedLow), most(tops.largestLow));
        }

        boolean fits(QuickBore bore, long travel, int required) {
            boolean tapers = !bore.stretches().isConstant(bore.narrowest);
            return travel - bore.lastFrom > last
                    && travel - bore.stretches().to(bore.narrowest) >= (tapers ? endInTaper : end)
                    && bore.low(bore.narrowest) - high >= required && statedCentre <= bore.mostCentre
                    && assumedLow <= bore.mostAssumedLow && largestLow <= bore.mostLow;
        }
    }

    QuickCommon(QuickBlock block) {
        kind = block.count == 0 ? 0 : block.kind[0];
        kindBit = block.count == 0 ? 0 : block.kindBit[0];
        claimKinds = block.count == 0 ? 0 : block.claimKinds[0];
        claimYes = block.count == 0 ? 0 : block.claimYes[0];
        claimNo = block.count == 0 ? 0 : block.claimNo[0];
        isAlike = block.count > 0 && IntStream.range(0, block.count)
                .allMatch(i -> block.inner[i] != null && block.statedLength[i] != QuickInner.NOT_STATED
                        && block.kind[i] == kind && block.claimKinds[i] == claimKinds
                        && block.claimYes[i] == claimYes && block.claimNo[i] == claimNo);
        leastClaim = Arrays.stream(block.claimValue).min().orElse(0);
        mostClaim = most(block.claimValue);
        otherKinds = Arrays.stream(block.otherKinds).reduce(0, (a, b) -> a | b);
        leastLength = Arrays.stream(block.statedLength).min().orElse(0);
        firstDeployed = Arrays.stream(block.deployedBeyond).min().orElse(0);
        lastDeployed = most(block.deployedBeyond);
        in = Most.of(block.in);
        out = Most.of(block.out);
    }

    private static long most(long[] values) {
        return Arrays.stream(values).max().orElse(0);
    }

    private static int most(int[] values) {
        return Arrays.stream(values).max().orElse(0);
    }

    /** The marks of all cells of the block with a lumen; {@link #NONE} where they have to be looked at one by one. */
    int marks(QuickSolver solver, QuickOuter outer) {
        boolean speaksOthers = (otherKinds & outer.kindBit | outer.claims.kinds() & kindBit) != 0;
        if (!isAlike || speaksOthers || !outer.tried.isEmpty() || !solver.canPassAll(outer)
                || solver.checksLength() && leastLength < outer.lengthNeeded) {
            return NONE;
        }
        int required = solver.required(outer.kind, kind);
        long travel = solver.lengths.travelLessOwn(outer);
        int said = said(outer);
        if (required == Passing.NOT_RULED || said == NONE || !in.fits(outer.bore, travel, required)
                || !out.fits(outer.bore, travel, required)) {
            return NONE;
        }
        long beyond = solver.travelBeyond(outer);
        boolean edges = solver.checksEdges();
        boolean all = edges && (outer.hasCollar || beyond > lastDeployed);
        boolean any = edges && (outer.hasCollar || beyond > firstDeployed);
        return all != any ? NONE : QuickJudgement.marks(Passing.FITS, Passing.FITS, said, Passing.FITS, all);
    }

    private int said(QuickOuter outer) {
        int label = outer.label.extreme();
        if ((claimKinds & outer.kindBit) == 0 || label == QuickLabel.NONE) {
            return 0;
        }
        if (label >= mostClaim) {
            return outer.label.complete() ? claimYes : 0;
        }
        return label < leastClaim ? claimNo : NONE;
    }
}
