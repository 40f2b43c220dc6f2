/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.escalation.state.SystemState;

/**
 * Roles of a move that have been cast so far.
 *
 * @param scene the system as the roles so far have changed it
 * @param wireIsShort whether the main wire is too short to exchange over it
 * @param answers who plays each role
 * @param lacks why a role has nobody
 */
record Cast(SystemState scene, boolean wireIsShort, List<RoleAnswer> answers, List<Lack> lacks) {
    Cast {
        answers = List.copyOf(answers);
        lacks = List.copyOf(lacks);
    }

    /** Nobody yet. */
    static Cast none(SystemState state) {
        return new Cast(state, false, List.of(), List.of());
    }

    Cast lacking(Lack lack) {
        return new Cast(scene, wireIsShort, answers, with(lacks, List.of(lack)));
    }

    Cast with(RoleAnswer answer, List<Lack> more) {
        return new Cast(scene, wireIsShort, with(answers, List.of(answer)), with(lacks, more));
    }

    Cast onShortWire() {
        return new Cast(scene, true, answers, lacks);
    }

    Cast in(SystemState system) {
        return new Cast(system, wireIsShort, answers, lacks);
    }

    private static <T> List<T> with(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }
}
