/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;

/**
 * The answers about a lumen and a block of devices. A scratch pad for one thread. Property by property most pairs are
 * answered in a loop over arrays, and the others one by one.
 */
public final class QuickRow {
    /** Marks of a pair of which the solver has to be asked. */
    public static final int ASK_SOLVER = -1;

    private static final int NOT_SEEN = -1;
    /** Some part of the lumen is too narrow; where, has to be looked for. */
    private static final int MAY_STOP = -2;
    /** Stands for the name of a lumen's section where no place decides. */
    private static final int NO_PLACE = -1;

    private final QuickSolver solver;
    private final Passing passing = new Passing();
    private int[] marks = {};
    private int[] worst = {};
    private int[] nominal = {};
    private int[] lumenName = {};
    private int[] deviceName = {};
    private int[] in = {};
    private int[] out = {};
    private int[] said = {};

    QuickRow(QuickSolver solver) {
        this.solver = solver;
    }

    /** Asks about the geometry of the way in alone; {@link #passage} has the verdicts. */
    public void askPassages(QuickOuter outer, QuickBlock block) {
        makeRoom(block.count);
        lookIn(outer, block);
    }

    /** The ordinal of a verdict of the geometry going in; one more than there are when no clearance is required. */
    public int passage(int i) {
        return in[i];
    }

    /**
     * The marks of all pairs of a lumen and a block of devices, where they are the same, and so is the place that
     * decides: every device passes the lumen in full, or none enters it.
     *
     * @param atEntry whether none enters
     * @return {@link #ASK_SOLVER} where the pairs have to be asked about
     */
    public int common(QuickOuter outer, QuickBlock block, boolean atEntry) {
        return block.common.marks(solver, outer, atEntry ? Passing.BLOCKED : Passing.FITS);
    }

    /** Asks about all pairs of a lumen and a block of devices. */
    public void ask(QuickOuter outer, QuickBlock block) {
        makeRoom(block.count);
        lookIn(outer, block);
        lookOut(outer, block);
        hear(outer, block);
        judge(outer, block);
        if (outer.isTried) {
            leaveTried(outer, block);
        }
    }

    private void makeRoom(int count) {
        if (marks.length < count) {
            marks = new int[count];
            worst = new int[count];
            nominal = new int[count];
            lumenName = new int[count];
            deviceName = new int[count];
            in = new int[count];
            out = new int[count];
            said = new int[count];
        }
    }

    private void lookIn(QuickOuter outer, QuickBlock block) {
        lookAtTops(outer, block, block.in, in);
        for (int i = 0; i < block.count; i++) {
            if (in[i] < 0) {
                in[i] = block.inner[i] == null ? Passing.NO_RULE : lookIn(outer, block.inner[i], i);
            }
        }
    }

    private int lookIn(QuickOuter outer, QuickInner inner, int i) {
        long travel = solver.lengths.travel(outer, inner);
        boolean stops = in[i] == MAY_STOP && passing.lookForStop(outer.bore, inner.in, travel);
        int verdict = stops ? Passing.BLOCKED
                : passing.look(outer.bore, inner.in, travel, solver.lengths.isLengthUnstated(outer, inner),
                        solver.required(outer.kind, inner.kind));
        worst[i] = passing.worst;
        nominal[i] = passing.nominal;
        lumenName[i] = passing.hasPlace ? passing.lumenName : NO_PLACE;
        deviceName[i] = passing.deviceName;
        return verdict;
    }

    private void lookOut(QuickOuter outer, QuickBlock block) {
        if (!block.changes) {
            System.arraycopy(in, 0, out, 0, block.count);
            return;
        }
        lookAtTops(outer, block, block.out, out);
        for (int i = 0; i < block.count; i++) {
            if (out[i] < 0) {
                QuickInner inner = block.inner[i];
                out[i] = inner == null || inner.out == inner.in ? in[i] : lookOut(outer, inner, i);
            }
        }
    }

    private int lookOut(QuickOuter outer, QuickInner inner, int i) {
        long travel = solver.lengths.travel(outer, inner);
        boolean stops = out[i] == MAY_STOP && passing.isStopped(outer.bore, inner.out, travel);
        return stops ? Passing.BLOCKED
                : passing.verdict(outer.bore, inner.out, travel, solver.lengths.isLengthUnstated(outer, inner),
                        solver.required(outer.kind, inner.kind));
    }

    /**
     * Devices that pass a lumen in full: only their widest place and its narrowest count. Where one of them is stopped
     * going in, the place where it stops has to be looked for, but for a tip that does not even enter.
     */
    private void lookAtTops(QuickOuter outer, QuickBlock block, QuickTops tops, int[] verdicts) {
        BoreExtremes bore = outer.extremes;
        if (!solver.canPassAll(outer)) {
            Arrays.fill(verdicts, 0, block.count, NOT_SEEN);
            return;
        }
        int low = bore.low;
        int centre = bore.centre;
        long travel = solver.lengths.travelLessOwn(outer);
        long atEntry = travel - bore.firstFrom;
        long atStart = travel - bore.lastFrom;
        long atEnd = travel - bore.narrowTo;
        long[] ends = bore.tapers ? tops.endInTaper : tops.end;
        int mostCentre = bore.mostCentre;
        int mostAssumedLow = bore.mostAssumedLow;
        int mostLow = bore.mostLow;
        boolean places = tops == block.in;
        boolean surely = !places && bore.isConstant;
        for (int i = 0; i < block.count; i++) {
            int margin = low - tops.high[i];
            int required = solver.required(outer.kind, block.kind[i]);
            boolean passes = atStart > tops.last[i] & atEnd >= ends[i] & required != Passing.NOT_RULED;
            boolean stops = tops.statedCentre[i] > mostCentre | tops.assumedLow[i] > mostAssumedLow
                    | tops.largestLow[i] > mostLow;
            boolean unknown = atEntry > tops.firstUnknown[i];
            int free = unknown ? Passing.UNKNOWN
                    : !passes ? NOT_SEEN : margin >= required ? Passing.FITS : Passing.TIGHT;
            int stopped = !passes ? NOT_SEEN : surely & tops.constant[i] ? Passing.BLOCKED : MAY_STOP;
            verdicts[i] = stops ? stopped : free;
            if (places) {
                worst[i] = margin;
                nominal[i] = centre - tops.centre[i];
                lumenName[i] = unknown ? NO_PLACE : bore.name;
                deviceName[i] = tops.name[i];
            }
            if (passes & stops && doesNotEnter(bore, tops, i)) {
                verdicts[i] = Passing.BLOCKED;
                if (places) {
                    placeAtEntry(outer, tops, i);
                }
            }
        }
    }

    private static boolean doesNotEnter(BoreExtremes bore, QuickTops tops, int i) {
        return tops.tipStatedCentre[i] > bore.mostCentreAtEntry | tops.tipAssumedLow[i] > bore.mostAssumedLowAtEntry
                | tops.tipLow[i] > bore.mostLowAtEntry;
    }

    private void placeAtEntry(QuickOuter outer, QuickTops tops, int i) {
        worst[i] = outer.low(true) - tops.tipHigh[i];
        nominal[i] = outer.centre(true) - tops.tipCentre[i];
        lumenName[i] = outer.sectionName(true);
        deviceName[i] = tops.tipName[i];
    }

    private void hear(QuickOuter outer, QuickBlock block) {
        QuickLabel label = outer.label;
        boolean hasLabel = label.extreme() != QuickLabel.NONE;
        for (int i = 0; i < block.count; i++) {
            boolean speaks = (block.claimKinds[i] & outer.kindBit) != 0 & hasLabel;
            int says = label.extreme() >= block.claimValue[i] ? label.complete() ? block.claimYes[i] : 0
                    : block.claimNo[i];
            boolean others = (block.otherKinds[i] & outer.kindBit | outer.claimKinds & block.kindBit[i]) != 0;
            said[i] = others ? solver.said(outer, block.inner[i]) : speaks ? says : 0;
        }
    }

    private void judge(QuickOuter outer, QuickBlock block) {
        boolean edges = solver.checksEdges();
        boolean hasLength = !(solver.lengths.reachStated() && outer.length == 0);
        long enough = hasLength ? solver.enoughLength(outer) : Long.MAX_VALUE;
        long travelBeyond = solver.travelBeyond(outer);
        for (int i = 0; i < block.count; i++) {
            boolean caution = edges & (outer.hasCollar | travelBeyond > block.deployedBeyond[i]);
            marks[i] = in[i] == Passing.NO_RULE || out[i] == Passing.NO_RULE ? ASK_SOLVER
                    : QuickJudgement.marks(in[i], out[i], said[i], length(outer, block, i, enough), caution);
        }
    }

    private int length(QuickOuter outer, QuickBlock block, int i, long enough) {
        if (block.enoughLength[i] >= enough) {
            return Passing.FITS;
        }
        return solver.lengthVerdict(outer, block.inner[i], solver.lengths.isLengthUnstated(outer, block.inner[i]));
    }

    /** Bench results are heard by the solver. */
    private void leaveTried(QuickOuter outer, QuickBlock block) {
        for (int i = 0; i < block.count; i++) {
            if (block.inner[i] != null && outer.wasTriedWith(block.inner[i])) {
                marks[i] = ASK_SOLVER;
            }
        }
    }

    /** Verdicts, authorities and marks of a pair, as {@link Marks} puts them, or {@link #ASK_SOLVER}. */
    public int marks(int i) {
        return marks[i];
    }

    /** Whether a place decides going in; what follows is of that place. */
    public boolean hasPlace(int i) {
        return lumenName[i] != NO_PLACE;
    }

    /** The worst clearance there. */
    public int worst(int i) {
        return worst[i];
    }

    /** The nominal clearance there. */
    public int nominal(int i) {
        return nominal[i];
    }

    /** Place of the name of the lumen's section among the different names of its stretches. */
    public int lumenName(int i) {
        return lumenName[i];
    }

    /** Place of the name of the device's section among the different names of its stretches going in. */
    public int deviceName(int i) {
        return deviceName[i];
    }
}
