/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.matrix.CellChange;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** A cell is the single answer, and a matrix that is solved again is the one that is solved anew. */
class MatrixLawsTest {
    private static final FitSolver SOLVER = FitSolver.standard(List.of());

    /** A library that is edited, and the question that is asked of it. */
    private static final class Library {
        private final Random random;
        private final List<Device> outer = new ArrayList<>();
        private final List<Device> inner = new ArrayList<>();
        private final Map<Device, ReadDevice> read = new HashMap<>();
        private RuleSet rules = TestRules.usual().rules();
        private Optional<Length> reach = Optional.empty();
        private int made;

        Library(Random random) {
            this.random = random;
            for (int i = 0; i < 4; i++) {
                outer.add(outer("g" + made++));
                inner.add(inner("b" + made++));
            }
        }

        private Device outer(String id) {
            return renamed(RandomPassages.any(random).outer(LengthUnit.MILLIMETRE).device(), id);
        }

        private Device inner(String id) {
            return renamed(RandomPassages.any(random).inner(LengthUnit.MILLIMETRE).device(), id);
        }

        private static Device renamed(Device d, String id) {
            return new Device(id, id, d.kind(), d.size(), d.effectiveLength(), d.takesWire(), d.sections(),
                    d.lumens(), d.deploys(), d.claims(), d.parts());
        }

        void edit() {
            int place = random.nextInt(3);
            switch (random.nextInt(8)) {
                case 0 -> outer.set(place, outer(outer.get(place).id()));
                case 1 -> outer.add(place, outer("g" + made++));
                case 2 -> Collections.shuffle(outer, random);
                case 3 -> inner.remove(inner.size() > 3 ? place : 0);
                case 4 -> inner.add(place, inner("b" + made++));
                case 5 -> reach = Optional.of(RandomPassage.STEP.times(random.nextInt(5)));
                case 6 -> rules = TestRules.usual().required("0.0" + random.nextInt(5) + " mm").rules();
                default -> inner.set(0, inner.isEmpty() ? inner("b" + made++) : inner(inner.get(0).id()));
            }
            if (inner.size() < 3) {
                inner.add(inner("b" + made++));
            }
        }

        MatrixQuestion question() {
            List<MatrixLine> lines = outer.stream().map(d -> new MatrixLine(read(d), d.lumens().get(0))).toList();
            return new MatrixQuestion(lines, inner.stream().map(this::read).toList(), Direction.TIP_FIRST, reach,
                    rules, SOLVER);
        }

        /** Unchanged devices stay the same objects, as the matrix expects; other rules read everything anew. */
        private ReadDevice read(Device device) {
            return read.computeIfAbsent(device, d -> ReadDevice.of(d, rules));
        }

        void forgetWhatWasRead() {
            read.clear();
        }
    }

    @Test
    void cellIsTheSingleAnswer() {
        Cases.check(30, random -> {
            MatrixQuestion question = new Library(random).question();
            FitMatrix matrix = FitMatrix.solve(question, Progress.SILENT);
            for (int line = 0; line < question.outer().size(); line++) {
                for (int column = 0; column < question.inner().size(); column++) {
                    assertEquals(alone(question, line, column), matrix.answer(line, column));
                }
            }
        });
    }

    /** The answer with everything read and asked for this pair alone. */
    private static FitAnswer alone(MatrixQuestion question, int line, int column) {
        MatrixLine outer = question.outer().get(line);
        RuleSet rules = question.rules();
        return FitSolver.standard(List.of())
                .answer(new FitQuestion(ReadDevice.of(outer.device().device(), rules), outer.lumen(),
                        ReadDevice.of(question.inner().get(column).device(), rules), question.direction(),
                        question.reach(), rules));
    }

    @Test
    void solvingAgainIsSolvingAnew() {
        Cases.check(15, random -> {
            Library library = new Library(random);
            FitMatrix matrix = FitMatrix.solve(library.question(), Progress.SILENT);
            for (int edit = 0; edit < 12; edit++) {
                RuleSet before = library.rules;
                library.edit();
                if (!before.equals(library.rules)) {
                    library.forgetWhatWasRead();
                }
                matrix = assertSolvedAnew(matrix, library.question());
            }
        });
    }

    private static FitMatrix assertSolvedAnew(FitMatrix former, MatrixQuestion question) {
        FitMatrix again = former.resolve(question, Progress.SILENT);
        FitMatrix anew = FitMatrix.solve(question, Progress.SILENT);
        Map<String, FitAnswer> before = answers(former);
        List<CellChange> expected = new ArrayList<>();
        for (int line = 0; line < question.outer().size(); line++) {
            for (int column = 0; column < question.inner().size(); column++) {
                FitAnswer answer = anew.answer(line, column);
                assertEquals(answer, again.answer(line, column));
                Optional<FitAnswer> was = Optional.ofNullable(before.get(pair(question, line, column)));
                if (!was.equals(Optional.of(answer))) {
                    expected.add(new CellChange(line, column, was, answer));
                }
            }
        }
        assertEquals(expected, again.changes());
        return again;
    }

    private static Map<String, FitAnswer> answers(FitMatrix matrix) {
        Map<String, FitAnswer> answers = new HashMap<>();
        for (int line = 0; line < matrix.question().outer().size(); line++) {
            for (int column = 0; column < matrix.question().inner().size(); column++) {
                answers.put(pair(matrix.question(), line, column), matrix.answer(line, column));
            }
        }
        return answers;
    }

    private static String pair(MatrixQuestion question, int line, int column) {
        return question.outer().get(line).device().device().id() + " "
                + question.inner().get(column).device().id();
    }
}
