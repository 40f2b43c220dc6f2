/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.log;

import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.junit.jupiter.api.Test;

class CountedTest {
    private static final Ladder LADDER = ladder(List.of(Moves.extension(1)),
            technique("a", Axis.MODIFY, tries(1, 0.5, 0.4), only("balloon", "balloon-1.0")),
            technique("b", Axis.MODIFY, tries(1, 0.5), only("balloon", "balloon-1.5")));

    private static Attempt attempt(String move, Outcome outcome) {
        return new Attempt(move, outcome, Costs.NONE, List.of(), "");
    }

    @Test
    void triesOfTechniquesCountInTheirOrder() {
        List<Attempt> log = List.of(attempt("a", Outcome.FAILED), attempt("extension", Outcome.CROSSED),
                attempt("b", Outcome.GIVEN_UP), attempt("a", Outcome.FAILED), attempt("a", Outcome.FAILED),
                attempt("b", Outcome.CROSSED), attempt("unknown", Outcome.FAILED));
        assertEquals(List.of(new Counted("a", 1, false), new Counted("a", 2, false), new Counted("b", 1, true)),
                Counted.of(log, LADDER));
    }
}
