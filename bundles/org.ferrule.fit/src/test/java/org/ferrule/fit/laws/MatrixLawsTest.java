/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.matrix.CellChange;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.matrix.PhaseVerdict;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.junit.jupiter.api.Test;

/** A cell is the single answer, and a matrix that is solved again is the one that is solved anew. */
class MatrixLawsTest {

    /** What is done with every pair of a question. */
    private interface PairUse {
        void use(int line, int column);
    }

    private static void forEachPair(MatrixQuestion question, PairUse use) {
        for (int line = 0; line < question.outer().size(); line++) {
            for (int column = 0; column < question.inner().size(); column++) {
                use.use(line, column);
            }
        }
    }

    @Test
    void cellIsTheSingleAnswer() {
        Cases.check(300, random -> assertCellsAreSingleAnswers(new RandomLibrary(random).question()));
    }

    @Test
    void cellOfManySizesIsTheSingleAnswer() {
        Cases.check(60, random -> assertCellsAreSingleAnswers(RandomLibrary.ofLines(random).question()));
    }

    private static void assertCellsAreSingleAnswers(MatrixQuestion question) {
        FitMatrix matrix = FitMatrix.solve(question, Progress.SILENT);
        forEachPair(question, (line, column) -> {
            FitAnswer alone = alone(question, line, column);
            assertEquals(alone, matrix.answer(line, column));
            assertEquals(FitCell.of(alone), matrix.cell(line, column), () -> "cell " + line + ", " + column);
            assertEquals(PhaseVerdict.of(alone.in()), matrix.in(line, column));
        });
    }

    /** The answer with everything read and asked for this pair alone. */
    private static FitAnswer alone(MatrixQuestion question, int line, int column) {
        MatrixLine outer = question.outer().get(line);
        RuleSet rules = question.rules();
        return question.solver().answer(new FitQuestion(ReadDevice.of(outer.device().device(), rules), outer.lumen(),
                ReadDevice.of(question.inner().get(column).device(), rules), question.direction(), question.reach(),
                rules));
    }

    @Test
    void countsAreThoseOfTheCells() {
        Cases.check(30, random -> {
            MatrixQuestion question = new RandomLibrary(random).question();
            FitMatrix matrix = FitMatrix.solve(question, Progress.SILENT);
            Map<PhaseVerdict, Integer> counted = new HashMap<>();
            forEachPair(question, (line, column) -> counted.merge(matrix.cell(line, column).in(), 1, Integer::sum));
            assertEquals(counted, matrix.verdicts());
        });
    }

    @Test
    void solvingAgainIsSolvingAnew() {
        Cases.check(30, random -> assertSolvedAnew(new RandomLibrary(random), 12));
    }

    @Test
    void solvingManySizesAgainIsSolvingAnew() {
        Cases.check(10, random -> assertSolvedAnew(RandomLibrary.ofLines(random), 6));
    }

    private static void assertSolvedAnew(RandomLibrary library, int edits) {
        FitMatrix matrix = FitMatrix.solve(library.question(), Progress.SILENT);
        for (int edit = 0; edit < edits; edit++) {
            library.edit();
            matrix = assertSolvedAnew(matrix, library.question());
        }
    }

    private static FitMatrix assertSolvedAnew(FitMatrix former, MatrixQuestion question) {
        FitMatrix again = former.resolve(question, Progress.SILENT);
        FitMatrix anew = FitMatrix.solve(question, Progress.SILENT);
        Map<String, FitCell> before = cells(former);
        List<CellChange> expected = new ArrayList<>();
        forEachPair(question, (line, column) -> {
            FitCell cell = anew.cell(line, column);
            assertEquals(cell, again.cell(line, column));
            Optional<FitCell> was = Optional.ofNullable(before.get(pair(question, line, column)));
            if (!was.equals(Optional.of(cell))) {
                expected.add(new CellChange(line, column, was, cell));
            }
        });
        assertEquals(expected, again.changes().toList());
        assertEquals(expected.size(), again.changes().count());
        return again;
    }

    private static Map<String, FitCell> cells(FitMatrix matrix) {
        Map<String, FitCell> cells = new HashMap<>();
        forEachPair(matrix.question(), (line, column) -> cells.put(pair(matrix.question(), line, column),
                matrix.cell(line, column)));
        return cells;
    }

    private static String pair(MatrixQuestion question, int line, int column) {
        MatrixLine outer = question.outer().get(line);
        return outer.device().device().id() + " " + outer.lumen().name() + " "
                + question.inner().get(column).device().id();
    }
}
