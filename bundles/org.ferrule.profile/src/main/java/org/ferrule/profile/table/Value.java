/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.table;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.quantity.Length;

/** A value of one device in the table of differences. */
public sealed interface Value {

    /**
     * An outer diameter.
     *
     * @param figure as an interval
     * @param assumed whether the rule set gives an end, or the centre, that the label does not state
     * @param at where it begins, from the distal tip; absent where that goes without saying
     */
    record Outer(Figure figure, boolean assumed, Optional<Length> at) implements Value {
    }

    /**
     * An inner diameter.
     *
     * @param figure as an interval
     * @param assumed whether the rule set gives an end, or the centre, that the label does not state
     */
    record Inner(Figure figure, boolean assumed) implements Value {
    }

    /** A clearance between a lumen and a wire. */
    record Left(Clearance clearance) implements Value {
    }

    /** A distance along the device. */
    record Distance(Length length) implements Value {
    }

    /**
     * Steps of stiffness; none when the sections with a stated stiffness do not differ enough.
     *
     * @param steps from distal to proximal
     * @param complete whether the stiffness of every section is stated
     */
    record Steps(List<StiffnessJump> steps, boolean complete) implements Value {
        public Steps {
            steps = List.copyOf(steps);
        }
    }

    /** The device has it, but nobody states it. */
    record NotKnown() implements Value {
    }

    /** The device has no such thing. */
    record None() implements Value {
    }
}
