/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Stretch;
import org.ferrule.fit.quick.QuickAnswer;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickSolver;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** The geometry in plain numbers is that of the solver: verdict, place, clearance, reach. */
class QuickLawsTest {
    private static final FitSolver GEOMETRY = FitSolver.with(List.of(new PassageCheck()), List.of());

    @Test
    void passageIsThatOfTheSolver() {
        Cases.check(300, random -> {
            MatrixQuestion question = new RandomLibrary(random).question();
            QuickSolver solver = QuickSolver.of(question.terms(), GEOMETRY, id -> true);
            QuickAnswer quick = solver.pad();
            for (MatrixLine line : question.outer()) {
                QuickOuter outer = solver.outer(line.device(), line.lumen()).orElseThrow();
                for (ReadDevice device : question.inner()) {
                    QuickInner inner = solver.inner(device).orElseThrow();
                    PhaseAnswer answer = GEOMETRY.answer(new FitQuestion(
                            line.device(), line.lumen(), device, question.direction(), question.reach(),
                            question.conditions(), question.rules())).in();
                    assertEquals(answer.geometry(), Verdict.values()[quick.askPassage(outer, inner)]);
                    assertSamePlace(question, line, device, answer, quick);
                }
            }
        });
    }

    private static void assertSamePlace(MatrixQuestion question, MatrixLine line, ReadDevice device,
            PhaseAnswer answer, QuickAnswer quick) {
        assertEquals(answer.clearance().isPresent(), quick.hasPlace());
        answer.clearance().ifPresent(clearance -> {
            assertEquals(clearance.worst(), new Length(quick.worst()));
            assertEquals(clearance.nominal(), new Length(quick.nominal()));
        });
        answer.limiting().ifPresent(limiting -> {
            assertEquals(limiting.lumenSection(), name(line.device().bore(line.lumen()), quick.lumenName()));
            assertEquals(limiting.deviceSection(),
                    name(device.outline(Phase.IN), quick.deviceName()));
        });
        answer.reach().ifPresent(reach -> assertEquals(reach, reach(question, line, device, quick.travelled())));
    }

    private static String name(List<Stretch> stretches, int place) {
        return stretches.stream().map(Stretch::name).distinct().toList().get(place);
    }

    private static Length reach(MatrixQuestion question, MatrixLine line, ReadDevice device, long travelled) {
        Length far = new Length(travelled).plus(line.lumen().distalAt());
        Optional<Length> whole = device.device().insertableLength();
        return question.direction() == Direction.TIP_FIRST ? new Length(travelled).minus(line.lumen().length())
                .minus(line.lumen().distalAt()) : whole.orElseThrow().minus(far);
    }
}
