/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Limiting;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** Laws of the way through an extension. */
class ThroughLawsTest {
    private static final int CASES = 30;

    private static SampleQuestion question(RandomShared shared, RandomExtension extension, LengthUnit unit) {
        return extension.question(shared, unit);
    }

    private static FitAnswer answer(RandomShared shared, RandomExtension extension) {
        return question(shared, extension, LengthUnit.MILLIMETRE).answer();
    }

    @Test
    void narrowerTubeNeverHelps() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            RandomExtension extension = RandomExtension.in(shared.passage(), random);
            assertNotBetter(answer(shared, extension),
                    answer(shared, extension.withBore(f -> f.plus(-random.nextInt(600)))));
        });
    }

    @Test
    void thickerRodNeverHelps() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            RandomExtension extension = RandomExtension.in(shared.passage(), random);
            assertNotBetter(answer(shared, extension),
                    answer(shared, extension.withRod(f -> f.plus(random.nextInt(600)))));
        });
    }

    @Test
    void rodNeverHelps() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            RandomExtension inside = new RandomExtension(1, RandomFigure.near(100_000, RandomFigure.Form.PLAIN, random),
                    RandomFigure.near(200, RandomFigure.anyForm(random), random), 0);
            RandomPassage passage = shared.passage();
            RandomShared untilTheCollar = shared.withPassage(new RandomPassage(passage.shaft(), passage.bore(),
                    passage.port(), passage.wire(), passage.direction(), -1, passage.rules()));
            assertNotBetter(untilTheCollar.answer(), answer(untilTheCollar, inside));
        });
    }

    @Test
    void extensionIsALumenOfTwoPartsWithARodInTheFirst() {
        Cases.check(CASES, random -> {
            RandomShared drawn = RandomShared.any(random);
            RandomShared shared = drawn.withPassage(withoutTapers(drawn.passage()));
            RandomExtension extension = RandomExtension.in(shared.passage(), random);
            FitAnswer through = answer(shared, extension);
            FitAnswer one = asOneLumen(shared, extension).answer();
            for (Phase phase : Phase.values()) {
                assertEquals(one.in(phase).geometry(), through.in(phase).geometry());
                assertEquals(one.in(phase).clearance(), through.in(phase).clearance());
                assertEquals(one.in(phase).reach(), through.in(phase).reach());
                assertEquals(one.in(phase).limiting().map(Limiting::lumenStation),
                        through.in(phase).limiting().map(Limiting::lumenStation));
            }
        });
    }

    private static RandomPassage withoutTapers(RandomPassage passage) {
        return withBore(passage, passage.bore().stream()
                .map(s -> new RandomSection(s.from(), s.to(), s.start(), s.start(), s.use())).toList());
    }

    private static RandomPassage withBore(RandomPassage passage, List<RandomSection> bore) {
        return new RandomPassage(passage.shaft(), bore, passage.port(), passage.wire(), passage.direction(),
                passage.beyond(), passage.rules());
    }

    /** The lumen around it up to the collar, then the tube; the rod ends where the tube begins. */
    private static RandomShared asOneLumen(RandomShared shared, RandomExtension extension) {
        int end = shared.passage().boreLength() + extension.protrusion();
        int collar = end - extension.tube();
        List<RandomSection> bore = new ArrayList<>(shared.passage().bore().stream().filter(s -> s.from() < collar)
                .map(s -> new RandomSection(s.from(), Math.min(s.to(), collar), s.start(), s.start(), s.use()))
                .toList());
        bore.add(new RandomSection(collar, end, extension.bore(), extension.bore(), RandomSection.Use.PLAIN));
        RandomSection rod = new RandomSection(0, 200, extension.rod(), extension.rod(), RandomSection.Use.PLAIN);
        List<RandomOccupant> occupants = new ArrayList<>(shared.occupants().stream()
                .map(o -> o.at(o.tipAhead() - extension.protrusion())).toList());
        occupants.add(new RandomOccupant(List.of(rod), RandomPassage.NONE, extension.rod(), -extension.tube(), false));
        return new RandomShared(withBore(shared.passage(), bore), occupants);
    }

    @Test
    void anotherOccupantNeverHelps() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            RandomExtension extension = RandomExtension.in(shared.passage(), random);
            assertNotBetter(answer(shared.withOneLess(), extension), answer(shared, extension));
        });
    }

    @Test
    void unitOfTheLabelNeverChangesAVerdict() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            RandomExtension extension = RandomExtension.in(shared.passage(), random);
            FitAnswer inches = question(shared, extension, LengthUnit.INCH).answer();
            FitAnswer millimetres = answer(shared, extension);
            for (Phase phase : Phase.values()) {
                assertEquals(millimetres.in(phase).verdict(), inches.in(phase).verdict());
                assertEquals(millimetres.in(phase).clearance(), inches.in(phase).clearance());
            }
        });
    }

    @Test
    void cellOfAMatrixIsTheSingleAnswer() {
        FitSolver solver = FitSolver.standard(List.of());
        Cases.check(CASES / 4, random -> {
            RandomShared shared = RandomShared.any(random);
            FitQuestion one = question(shared, RandomExtension.in(shared.passage(), random), LengthUnit.MILLIMETRE)
                    .question();
            FitQuestion two = RandomShared.any(random).question(LengthUnit.MILLIMETRE)
                    .under(one.rules()).question();
            MatrixQuestion matrix = new MatrixQuestion(
                    List.of(new MatrixLine(one.outer(), one.lumen()), new MatrixLine(two.outer(), two.lumen())),
                    List.of(one.inner(), two.inner()), one.direction(), Optional.empty(), one.conditions(),
                    one.rules(), solver);
            FitMatrix solved = FitMatrix.solve(matrix, Progress.SILENT);
            for (int line = 0; line < 2; line++) {
                for (int column = 0; column < 2; column++) {
                    assertEquals(FitSolver.standard(List.of()).answer(matrix.question(line, column)),
                            solved.answer(line, column));
                }
            }
        });
    }

    private static void assertNotBetter(FitAnswer before, FitAnswer harder) {
        for (Phase phase : Phase.values()) {
            Verdict was = before.in(phase).geometry();
            Verdict is = harder.in(phase).geometry();
            assertTrue(is.compareTo(was) >= 0, was + " became " + is);
        }
    }
}
