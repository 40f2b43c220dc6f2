/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.escalation.plan;

import static org.ferrule.escalation.sample.Moves.ladder;
import static org.ferrule.escalation.sample.Moves.only;
import static org.ferrule.escalation.sample.Moves.technique;
import static org.ferrule.escalation.sample.Moves.tries;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.ferrule.escalation.plan.Progress.LogProblem;
import org.ferrule.escalation.sample.Cases;
import org.ferrule.escalation.sample.Moves;
import org.ferrule.escalation.sample.Room;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Ladder;
import org.junit.jupiter.api.Test;

/** Where a case stands after its log. */
class ProgressTest {
    private static final Ladder LADDER = ladder(List.of(Moves.extension(3), Moves.secondWire(1)),
            technique("small", Axis.PROFILE, tries(2, 0.5, 0.4), only("balloon", "balloon-1.0")));
    private static final Room ROOM = Room.usual().has("balloon-1.0", 2).has("extension-6", 1).has("wire-190", 1);

    private static Attempt attempt(String move, Outcome outcome, String... units) {
        List<Attempt.UsedUnit> used = units.length == 0 ? List.of()
                : List.of(new Attempt.UsedUnit(units[0], units[1], units[2]));
        return new Attempt(move, outcome, Costs.NONE, used, "");
    }

    private static Progress after(Attempt... log) {
        CaseFile file = Cases.usual();
        for (Attempt attempt : log) {
            file = file.logging(attempt);
        }
        return Progress.of(file, LADDER, ROOM.stock(), ROOM.instruments());
    }

    @Test
    void failedTriesCountThoseThatWereGivenUpDoNot() {
        Progress progress = after(attempt("small", Outcome.FAILED), attempt("small", Outcome.GIVEN_UP),
                attempt("small", Outcome.FAILED));
        assertEquals(2, progress.triesOf("small"));
        assertEquals(0, progress.triesOf("other"));
        assertFalse(progress.crossed());
        assertEquals(List.of(), progress.problems());
    }

    @Test
    void aCrossedTechniqueEndsTheCaseAndAFailedOneAfterItDoesNotReopenIt() {
        assertTrue(after(attempt("small", Outcome.CROSSED)).crossed());
        assertTrue(after(attempt("small", Outcome.CROSSED), attempt("small", Outcome.FAILED)).crossed());
        assertEquals(Map.of("small", 0), after(attempt("small", Outcome.CROSSED)).tries());
    }

    @Test
    void aSetupThatFailedAndThenHeldIsInPlace() {
        Attempt failed = attempt("extension", Outcome.FAILED, "extension", "extension-6", "L-extension-6");
        Progress once = after(failed);
        assertEquals(Set.of("extension"), once.failedSetups());
        assertEquals(Set.of(), once.setups());
        assertTrue(once.system().extension().isEmpty());
        assertEquals(0, once.stock().shelf().item("extension-6").orElseThrow().quantity(), "its unit is used up");
        Progress twice = after(attempt("extension", Outcome.FAILED),
                attempt("extension", Outcome.CROSSED, "extension", "extension-6", "L-extension-6"));
        assertEquals(Set.of(), twice.failedSetups());
        assertEquals(Set.of("extension"), twice.setups());
        assertEquals("extension-6", twice.system().extension().orElseThrow().device());
        assertFalse(twice.crossed(), "a set-up gets nothing across");
    }

    @Test
    void problemsOfALogNameTheirEntry() {
        List<LogProblem> problems = after(attempt("small", Outcome.FAILED, "balloon", "none", "L"),
                attempt("nothing", Outcome.FAILED),
                attempt("second-wire", Outcome.CROSSED, "other role", "wire-190", "L-wire-190"),
                attempt("small", Outcome.FAILED, "balloon", "balloon-1.0", "L-9")).problems();
        assertEquals(List.of(new LogProblem(0, LogProblem.Kind.UNKNOWN_ITEM, "none"),
                new LogProblem(1, LogProblem.Kind.UNKNOWN_MOVE, "nothing"),
                new LogProblem(2, LogProblem.Kind.NO_DEVICE_FOR_ROLE, "wire")), problems.subList(0, 3));
        assertEquals(LogProblem.Kind.NOT_ON_SHELF, problems.get(3).kind());
        assertEquals(3, problems.get(3).entry());
        assertTrue(problems.get(3).detail().contains("lot \"L-9\""), problems.get(3).detail());
    }
}
