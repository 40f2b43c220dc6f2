/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.chart.AssembledChart;
import org.ferrule.engine.chart.OpenChart;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.FitMatrix;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.matrix.Progress;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.chart.LiveAnswers;
import org.ferrule.ui.fit.matrix.MatrixLine;
import org.ferrule.ui.fit.matrix.MatrixLines;
import org.ferrule.ui.fit.matrix.Side;

/** What an edit of one file changes in one chart: prepared on the display's thread, solved on any. */
final class ChartEffect {

    private final IFile file;
    private final AssembledChart before;
    private final AssembledChart after;
    private final Optional<FitMatrix> answered;

    private ChartEffect(IFile file, AssembledChart before, AssembledChart after, Optional<FitMatrix> answered) {
        this.file = file;
        this.before = before;
        this.after = after;
        this.answered = answered;
    }

    /** Prepares the answers of a chart before and after the edit; nothing where one of the two cannot be asked. */
    static Optional<ChartEffect> of(LiveAnswers answers, IFile edited) {
        SavedState state = new SavedState(answers);
        try {
            return state.before(edited).map(ChartEffect::assemble)
                    .flatMap(before -> shown(answers, before).or(() -> unanswered(answers, before, state)));
        } catch (RuleSetException e) {
            return Optional.empty(); // the chart itself says what is wrong with its rules
        }
    }

    /** The editor of the chart may have the answers after the edit already. */
    private static Optional<ChartEffect> shown(LiveAnswers answers, AssembledChart before) {
        return answers.stale() ? Optional.empty()
                : answers.shown().map(solved -> new ChartEffect(answers.file(), before,
                        solved.chart(), Optional.of(solved.matrix())));
    }

    private static Optional<ChartEffect> unanswered(LiveAnswers answers, AssembledChart before, SavedState state) {
        return state.now().map(now -> new ChartEffect(answers.file(), before, assemble(now), Optional.empty()));
    }

    private static AssembledChart assemble(OpenChart chart) {
        return chart.assemble(Extensions.ofPlatform().checks());
    }

    /** Works out the verdicts of pairs that are there before and after, and differ. */
    List<VerdictChange> solve(Progress progress) {
        FitMatrix was = FitMatrix.solve(before.question(), progress);
        FitMatrix is = answered.orElseGet(() -> FitMatrix.solve(after.question(), progress));
        Map<String, Integer> rows = places(MatrixLines.of(before, Side.OUTER));
        Map<String, Integer> columns = places(MatrixLines.of(before, Side.INNER));
        List<MatrixLine> outer = MatrixLines.of(after, Side.OUTER);
        List<MatrixLine> inner = MatrixLines.of(after, Side.INNER);
        List<VerdictChange> changes = new ArrayList<>();
        for (int row = 0; row < outer.size(); row++) {
            for (int column = 0; column < inner.size(); column++) {
                Integer formerRow = rows.get(outer.get(row).key());
                Integer formerColumn = columns.get(inner.get(column).key());
                if (formerRow != null && formerColumn != null) {
                    Pair pair = new Pair(is, row, column, outer.get(row), inner.get(column));
                    pair.compare(was.cell(formerRow, formerColumn), is.cell(row, column)).ifPresent(changes::add);
                }
            }
        }
        return changes;
    }

    private static Map<String, Integer> places(List<MatrixLine> lines) {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            places.putIfAbsent(lines.get(i).key(), i);
        }
        return places;
    }

    /** One cell of the later matrix. */
    private final class Pair {

        private final FitMatrix matrix;
        private final int row;
        private final int column;
        private final MatrixLine outer;
        private final MatrixLine inner;

        Pair(FitMatrix matrix, int row, int column, MatrixLine outer, MatrixLine inner) {
            this.matrix = matrix;
            this.row = row;
            this.column = column;
            this.outer = outer;
            this.inner = inner;
        }

        Optional<VerdictChange> compare(FitCell was, FitCell is) {
            if (!was.in().equals(is.in())) {
                return Optional.of(change("in", VerdictLook.of(was.in()), VerdictLook.of(is.in())));
            }
            return was.out().equals(is.out()) ? Optional.empty()
                    : Optional.of(change("out", VerdictLook.of(was.out()), VerdictLook.of(is.out())));
        }

        private VerdictChange change(String phase, VerdictLook was, VerdictLook is) {
            return new VerdictChange(file, outer.head().title(), inner.head().title(), phase, was, is,
                    () -> reason(phase));
        }

        private String reason(String phase) {
            PhaseAnswer answer = phase.equals("in") ? matrix.answer(row, column).in()
                    : matrix.answer(row, column).out();
            return new AnswerWords(ReasonWords.english(ShownUnits.now())).summary(answer);
        }
    }
}
