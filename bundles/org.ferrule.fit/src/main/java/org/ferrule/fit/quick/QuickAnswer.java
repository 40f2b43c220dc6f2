/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * The answer to the question that was asked last. A scratch pad for one thread: asking the next one overwrites it.
 * Verdicts and authorities are the ordinals of their enumerations, lengths thirds of a nanometre.
 */
public final class QuickAnswer {
    private final QuickSolver solver;
    private final Passing in = new Passing();
    private final Passing out = new Passing();
    private int judgedIn;
    private int judgedOut;
    private int lengthVerdict;
    private boolean hasCaution;

    QuickAnswer(QuickSolver solver) {
        this.solver = solver;
    }

    /** Asks about a pair; false when the solver has to be asked, and nothing here is of use. */
    public boolean ask(QuickOuter outer, QuickInner inner) {
        if (!outer.tried.isEmpty() && outer.tried.contains(inner.partner.id())) {
            return false;
        }
        long travel = travel(outer, inner);
        boolean unstated = isLengthUnstated(outer, inner);
        int required = solver.required(outer, inner);
        int geometryIn = in.look(outer.bore, inner.in, travel, unstated, required);
        int geometryOut = inner.out == inner.in ? geometryIn
                : out.verdict(outer.bore, inner.out, travel, unstated, required);
        if (geometryIn == Passing.NO_RULE || geometryOut == Passing.NO_RULE) {
            return false;
        }
        int said = said(outer, inner);
        judgedIn = QuickJudgement.of(geometryIn, said & 3);
        judgedOut = QuickJudgement.of(geometryOut, said >> 2);
        lengthVerdict = solver.checksLength ? lengthVerdict(outer, inner, unstated) : Passing.FITS;
        hasCaution = solver.checksEdges && solver.tipFirst && meetsEdge(outer, inner, travel);
        return true;
    }

    private boolean asksForDistance() {
        return solver.reachStated && solver.tipFirst;
    }

    private long travel(QuickOuter outer, QuickInner inner) {
        if (asksForDistance()) {
            return outer.lengthNeeded;
        }
        if (inner.insertableLength == QuickInner.NOT_STATED) {
            return outer.length;
        }
        return solver.tipFirst ? inner.insertableLength : Math.max(0, inner.insertableLength - outer.beyond);
    }

    private boolean isLengthUnstated(QuickOuter outer, QuickInner inner) {
        if (solver.reachStated && outer.length == 0) {
            return true;
        }
        return inner.statedLength == QuickInner.NOT_STATED
                && (!asksForDistance() || Math.max(0, inner.insertableLength) < outer.lengthNeeded);
    }

    /** What the check of lengths finds: a matter of a few numbers on either side. */
    private int lengthVerdict(QuickOuter outer, QuickInner inner, boolean unstated) {
        if (inner.statedLength != QuickInner.NOT_STATED && inner.statedLength < outer.lengthNeeded) {
            return Passing.BLOCKED;
        }
        return solver.reachStated && unstated ? Passing.UNKNOWN : Passing.FITS;
    }

    /** What the check of edges warns of, tip first. */
    private boolean meetsEdge(QuickOuter outer, QuickInner inner, long travel) {
        boolean travelKnown = asksForDistance() || inner.statedLength != QuickInner.NOT_STATED;
        return outer.hasCollar || inner.deploys && (!travelKnown || travel > outer.length);
    }

    int said(QuickOuter outer, QuickInner inner) {
        int said = 0;
        if (inner.claims.maySpeakOf(outer.kindBit)) {
            said = inner.claims.say(outer.partner, outer.label, wire(outer, inner));
        }
        if (outer.claims.maySpeakOf(inner.kindBit)) {
            said |= outer.claims.say(inner.partner, entering(outer, inner), wire(outer, inner));
        }
        return said;
    }

    private QuickLabel entering(QuickOuter outer, QuickInner inner) {
        if (!solver.tipFirst) {
            return inner.labels.of(outer.beyond);
        }
        if (asksForDistance()) {
            return inner.labels.of(outer.lengthNeeded);
        }
        return inner.statedLength == QuickInner.NOT_STATED ? inner.labels.whole()
                : inner.labels.of(inner.statedLength);
    }

    private int wire(QuickOuter outer, QuickInner inner) {
        if (!inner.isWire) {
            return inner.wire;
        }
        QuickLabel label = entering(outer, inner);
        return label.complete() ? label.extreme() : QuickLabel.NONE;
    }

    /** The verdict going in. */
    public int verdictIn() {
        return Math.max(QuickJudgement.verdict(judgedIn), lengthVerdict);
    }

    /** The verdict coming out. */
    public int verdictOut() {
        return Math.max(QuickJudgement.verdict(judgedOut), lengthVerdict);
    }

    /** The authority going in. */
    public int authorityIn() {
        return QuickJudgement.authority(judgedIn);
    }

    /** The authority coming out. */
    public int authorityOut() {
        return QuickJudgement.authority(judgedOut);
    }

    /** Whether authorities contradict each other in any phase. */
    public boolean hasConflict() {
        return QuickJudgement.isConflict(judgedIn) || QuickJudgement.isConflict(judgedOut);
    }

    /** Whether there is something to watch in any phase. */
    public boolean hasCaution() {
        return hasCaution;
    }

    /** How far the leading end comes going in, from the end of the lumen that it enters. */
    public long travelled() {
        return in.travelled;
    }

    /** Whether a place decides going in; what follows is of that place. */
    public boolean hasPlace() {
        return in.hasPlace;
    }

    /** The worst clearance there. */
    public long worst() {
        return in.worst;
    }

    /** The nominal clearance there. */
    public long nominal() {
        return in.nominal;
    }

    /** Place of the name of the lumen's section among the different names of its stretches. */
    public int lumenName() {
        return in.lumenName;
    }

    /** Place of the name of the device's section among the different names of its stretches going in. */
    public int deviceName() {
        return in.deviceName;
    }
}
