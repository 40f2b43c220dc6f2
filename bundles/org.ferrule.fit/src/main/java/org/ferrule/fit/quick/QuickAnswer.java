/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * The geometry of the passage that was asked about last. A scratch pad for one thread: asking the next one overwrites it.
 * Lengths are thirds of a nanometre.
 */
public final class QuickAnswer {
    private final QuickSolver solver;
    private final Passing in = new Passing();

    QuickAnswer(QuickSolver solver) {
        this.solver = solver;
    }

    /**
     * Asks about the geometry of the way in alone; returns the ordinal of its verdict. The place that decides and how
     * far the device comes are those of the answer.
     */
    public int askPassage(QuickOuter outer, QuickInner inner) {
        return in.look(outer.bore, inner.in, solver.lengths.travel(outer, inner),
                solver.lengths.isLengthUnstated(outer, inner),
                solver.required(outer.kind, inner.kind));
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
    public int worst() {
        return in.worst;
    }

    /** The nominal clearance there. */
    public int nominal() {
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
