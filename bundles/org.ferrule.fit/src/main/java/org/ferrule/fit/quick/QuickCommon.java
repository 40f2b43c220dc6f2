/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What the devices of a block have in common: the extremes of what stands in its arrays. Where the extremes pass a lumen,
 * or none enters it, and the claims agree, all cells of the block have the same marks, and only their clearances differ.
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
    private final Extremes in;
    private final Extremes out;

    /** The extremes of widest places and of tips in one phase. */
    private record Extremes(long last, long end, long endInTaper, int high, int statedCentre, int assumedLow,
            int largestLow, int tipStatedCentre, int tipAssumedLow, int tipLow) {

        static Extremes of(QuickTops tops) {
            return new Extremes(most(tops.last), most(tops.end), most(tops.endInTaper), most(tops.high),
                    most(tops.statedCentre), most(tops.assumedLow), most(tops.largestLow),
                    least(tops.tipStatedCentre), least(tops.tipAssumedLow), least(tops.tipLow));
        }

        boolean have(int verdict, BoreExtremes bore, long travel, int required) {
            return travel - bore.lastFrom > last
                    && travel - bore.narrowTo >= (bore.tapers ? endInTaper : end)
                    && (verdict == Passing.FITS ? fit(bore, required) : doNotEnter(bore));
        }

        private boolean fit(BoreExtremes bore, int required) {
            return bore.low - high >= required && statedCentre <= bore.mostCentre
                    && assumedLow <= bore.mostAssumedLow && largestLow <= bore.mostLow;
        }

        private boolean doNotEnter(BoreExtremes bore) {
            return tipStatedCentre > bore.mostCentreAtEntry || tipAssumedLow > bore.mostAssumedLowAtEntry
                    || tipLow > bore.mostLowAtEntry;
        }
    }

    QuickCommon(QuickBlock block) {
        kind = block.count == 0 ? 0 : block.kind[0];
        kindBit = block.count == 0 ? 0 : block.kindBit[0];
        claimKinds = block.count == 0 ? 0 : block.claimKinds[0];
        claimYes = block.count == 0 ? 0 : block.claimYes[0];
        claimNo = block.count == 0 ? 0 : block.claimNo[0];
        isAlike = block.count > 0 && IntStream.range(0, block.count)
                .allMatch(i -> block.inner[i] != null && block.enoughLength[i] != QuickInner.NOT_STATED
                        && block.kind[i] == kind && block.claimKinds[i] == claimKinds
                        && block.claimYes[i] == claimYes && block.claimNo[i] == claimNo);
        leastClaim = least(block.claimValue);
        mostClaim = most(block.claimValue);
        otherKinds = Arrays.stream(block.otherKinds).reduce(0, (a, b) -> a | b);
        leastLength = least(block.enoughLength);
        firstDeployed = least(block.deployedBeyond);
        lastDeployed = most(block.deployedBeyond);
        in = Extremes.of(block.in);
        out = Extremes.of(block.out);
    }

    private static long most(long[] values) {
        return Arrays.stream(values).max().orElse(0);
    }

    private static int most(int[] values) {
        return Arrays.stream(values).max().orElse(0);
    }

    private static long least(long[] values) {
        return Arrays.stream(values).min().orElse(0);
    }

    private static int least(int[] values) {
        return Arrays.stream(values).min().orElse(0);
    }

    /**
     * The marks of all cells of the block with a lumen.
     *
     * @param verdict which all devices are to have: that they fit, or that they are blocked since none enters
     * @return {@link #NONE} where it is not so, or the cells differ in something else
     */
    int marks(QuickSolver solver, QuickOuter outer, int verdict) {
        boolean speaksOthers = (otherKinds & outer.kindBit | outer.claimKinds & kindBit) != 0;
        if (!isAlike || speaksOthers || outer.isTried || !solver.canPassAll(outer)
                || leastLength < solver.enoughLength(outer)) {
            return NONE;
        }
        int required = solver.required(outer.kind, kind);
        long travel = solver.lengths.travelLessOwn(outer);
        int said = said(outer);
        if (required == Passing.NOT_RULED || said == NONE || !in.have(verdict, outer.extremes, travel, required)
                || !out.have(verdict, outer.extremes, travel, required)) {
            return NONE;
        }
        long beyond = solver.travelBeyond(outer);
        boolean edges = solver.checksEdges();
        boolean all = edges && (outer.hasCollar || beyond > lastDeployed);
        boolean any = edges && (outer.hasCollar || beyond > firstDeployed);
        return all != any ? NONE : QuickJudgement.marks(verdict, verdict, said, Passing.FITS, all);
    }

    private int said(QuickOuter outer) {
        int label = outer.labelExtreme;
        if ((claimKinds & outer.kindBit) == 0 || label == QuickLabel.NONE) {
            return 0;
        }
        if (label >= mostClaim) {
            return outer.labelComplete ? claimYes : 0;
        }
        return label < leastClaim ? claimNo : NONE;
    }
}
