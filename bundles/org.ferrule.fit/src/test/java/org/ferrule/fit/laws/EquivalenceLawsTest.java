/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.EdgeCheck;
import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.check.LengthCheck;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Questions that are the same have the same answer. */
class EquivalenceLawsTest {
    private static final int CASES = 200;

    @Test
    void unitOfTheLabelNeverChangesAVerdict() {
        Cases.check(CASES, random -> {
            RandomPassage passage = RandomPassages.any(random);
            FitAnswer millimetres = passage.question(LengthUnit.MILLIMETRE).answer();
            for (LengthUnit unit : List.of(LengthUnit.INCH, LengthUnit.FRENCH)) {
                assertSame(millimetres, passage.question(unit).answer());
            }
        });
    }

    private static void assertSame(FitAnswer a, FitAnswer b) {
        for (Phase phase : Phase.values()) {
            assertSameFigures(a.in(phase), b.in(phase));
            assertEquals(codes(a.in(phase)), codes(b.in(phase)));
        }
    }

    private static void assertSameFigures(PhaseAnswer a, PhaseAnswer b) {
        assertEquals(a.verdict(), b.verdict());
        assertEquals(a.clearance(), b.clearance());
        assertEquals(a.limiting(), b.limiting());
        assertEquals(a.reach(), b.reach());
    }

    private static List<ReasonCode> codes(PhaseAnswer answer) {
        return answer.reasons().stream().map(Reason::code).toList();
    }

    @Test
    void mirrorImageHasTheSameGeometry() {
        Cases.check(CASES, random -> {
            RandomPassage any = RandomPassages.any(random);
            RandomPassage tipFirst = new RandomPassage(any.shaft().stream().map(RandomSection::asItIs).toList(),
                    any.bore(), RandomPassage.NONE, any.wire(), Direction.TIP_FIRST, RandomPassage.NONE, any.rules());
            PhaseAnswer there = tipFirst.answer().in();
            PhaseAnswer mirrored = tipFirst.mirrored().answer().in();
            assertEquals(there.geometry(), mirrored.geometry());
            assertEquals(there.clearance().map(c -> c.worst()), mirrored.clearance().map(c -> c.worst()));
        });
    }

    @Test
    void orderOfChecksDoesNotMatter() {
        List<FitCheck> checks = new ArrayList<>(List.of(new PassageCheck(), new LengthCheck(), new EdgeCheck(),
                (question, phase) -> Finding.of(Verdict.TIGHT, List.of(Reason.of(ReasonCode.COLLAR_STEP))),
                new Yielding(Verdict.TIGHT), new Yielding(Verdict.UNKNOWN)));
        Cases.check(CASES, random -> {
            FitQuestion question = RandomPassages.any(random).question(LengthUnit.MILLIMETRE).question();
            PhaseAnswer inOrder = FitSolver.with(checks, List.of()).answer(question).in();
            Collections.shuffle(checks, random);
            PhaseAnswer shuffled = FitSolver.with(checks, List.of()).answer(question).in();
            assertSameFigures(inOrder, shuffled);
            assertEquals(new HashSet<>(inOrder.reasons()), new HashSet<>(shuffled.reasons()));
        });
    }

    /** A check beside that of the passage, such as a plug-in brings. */
    private record Yielding(Verdict verdict) implements FitCheck {
        @Override
        public Finding check(FitQuestion question, Phase phase) {
            return Finding.of(verdict, List.of(Reason.of(ReasonCode.MISSING_FIGURE, Reason.name("a"),
                    Reason.name("b"), Reason.name("c"))));
        }

        @Override
        public boolean yieldsToStatements() {
            return true;
        }
    }
}
