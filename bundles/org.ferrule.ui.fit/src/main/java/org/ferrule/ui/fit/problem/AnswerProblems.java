/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.matrix.FitCell;
import org.ferrule.fit.matrix.SolveCancelledException;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.FitChart;
import org.ferrule.model.check.Severity;
import org.ferrule.ui.document.DocumentRecord;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.matrix.MatrixLine;
import org.ferrule.ui.fit.matrix.MatrixLines;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.problem.FoundProblem;

/**
 * What is doubtful in the answers of a chart: every conflict between authorities, the tight pairs of each row, and the
 * assumed figures that decide.
 */
final class AnswerProblems {

    private static final int MOST_CONFLICTS = 100;
    private static final int NAMED = 4;

    private final ReasonWords words = ReasonWords.english(ShownUnits.now());
    private final List<FoundProblem> found = new ArrayList<>();
    private final Map<Place, Assumed> assumed = new LinkedHashMap<>();
    private final LimitingFigures.Finder limitingFigures;
    private final DocumentRecord record;
    private final EObject place;
    private final SolvedChart solved;
    private final List<MatrixLine> outer;
    private final List<MatrixLine> inner;
    private int conflicts;

    /** An assumed figure, the first cell that it decides, and how many it decides. */
    private record Assumed(PairCode first, int count) {
    }

    /** A figure of a section of a line. */
    private record Place(Figure figure, boolean lumen, int line, String section) {
    }

    AnswerProblems(DocumentRecord record, FitChart chart, SolvedChart solved) {
        this.record = record;
        this.place = chart.getOuter() == null ? chart : chart.getOuter();
        this.solved = solved;
        this.limitingFigures = new LimitingFigures.Finder(solved.matrix());
        this.outer = MatrixLines.of(solved.chart(), Side.OUTER);
        this.inner = MatrixLines.of(solved.chart(), Side.INNER);
    }

    /**
     * Looks through all cells.
     *
     * @throws SolveCancelledException if that is no longer wanted
     */
    List<FoundProblem> all(BooleanSupplier cancelled) {
        for (int row = 0; row < outer.size(); row++) {
            if (cancelled.getAsBoolean()) {
                throw new SolveCancelledException();
            }
            look(row);
        }
        if (conflicts > MOST_CONFLICTS) {
            add(Severity.WARNING, "chart.conflicts", (conflicts - MOST_CONFLICTS)
                    + " more cells with conflicts between authorities: see the marks in the matrix");
        }
        Map<String, Assumed> byWords = new TreeMap<>();
        assumed.forEach((place, use) -> byWords.merge(inWords(place), use,
                (one, other) -> new Assumed(one.first(), one.count() + other.count())));
        byWords.forEach((figure, use) -> add(Severity.INFO, use.first().text(),
                "Assumed from the rule set: " + figure + "; it decides " + count(use.count(), "answer")));
        return found;
    }

    private void look(int row) {
        List<Integer> tight = new ArrayList<>();
        for (int column = 0; column < inner.size(); column++) {
            FitCell cell = solved.matrix().cell(row, column);
            if (cell.hasConflict() && ++conflicts <= MOST_CONFLICTS) {
                addConflict(row, column);
            }
            noteAssumed(row, column, cell);
            if (cell.in().verdict() == Verdict.TIGHT) {
                tight.add(column);
            }
        }
        if (!tight.isEmpty()) {
            add(Severity.WARNING, code("tight", row, tight.get(0)).text(), outer.get(row).head().title() + ": "
                    + count(tight.size(), "tight pair") + ", " + names(tight));
        }
    }

    private String names(List<Integer> columns) {
        String first = columns.stream().limit(NAMED).map(column -> inner.get(column).head().title())
                .collect(Collectors.joining(", "));
        return columns.size() > NAMED ? first + " and " + (columns.size() - NAMED) + " more" : first;
    }

    private void addConflict(int row, int column) {
        FitAnswer answer = solved.matrix().answer(row, column);
        PhaseAnswer phase = answer.in().hasConflict() ? answer.in() : answer.out();
        PairNames names = PairNames.of(solved.chart().outer().get(row).device().device(),
                solved.chart().inner().get(column).device()).with(solved.matrix().question().conditions());
        String reasons = phase.reasons().stream().filter(AnswerProblems::isConflict)
                .map(reason -> words.say(reason, names)).collect(Collectors.joining("; "));
        add(Severity.WARNING, code("conflict", row, column).text(), inner.get(column).head().title() + " in "
                + outer.get(row).head().title() + ": " + reasons);
    }

    private static boolean isConflict(Reason reason) {
        return reason.code().weight() == ReasonCode.Weight.CONFLICT;
    }

    /** A figure decides where geometry does, at the place that limits. */
    private void noteAssumed(int row, int column, FitCell cell) {
        if (cell.in().authority() == Authority.GEOMETRY && cell.in().verdict() != Verdict.UNKNOWN
                && cell.limiting().isPresent()) {
            LimitingFigures figures = limitingFigures.of(row, column, cell.limiting().get());
            figures.lumen().filter(Figure::centreAssumed).ifPresent(
                    figure -> note(new Place(figure, true, row, cell.limiting().get().lumenSection()), row, column));
            figures.device().filter(Figure::centreAssumed).ifPresent(figure -> note(
                    new Place(figure, false, column, cell.limiting().get().deviceSection()), row, column));
        }
    }

    private void note(Place figure, int row, int column) {
        Assumed before = assumed.get(figure);
        assumed.put(figure, before == null ? new Assumed(code("assumed", row, column), 1)
                : new Assumed(before.first(), before.count() + 1));
    }

    /** In words only now: in a large chart one figure decides thousands of cells. */
    private String inWords(Place place) {
        return place.lumen()
                ? words.lengths().lumen(place.figure().centre()) + " in the lumen \"" + place.section() + "\" of "
                        + outer.get(place.line()).head().title()
                : words.lengths().device(place.figure().centre()) + " of the section \"" + place.section() + "\" of "
                        + inner.get(place.line()).head().title();
    }

    private PairCode code(String topic, int row, int column) {
        return new PairCode(topic, outer.get(row).key(), inner.get(column).key());
    }

    private void add(Severity severity, String code, String message) {
        found.add(FoundProblem.at(record, place, null, severity, code, message));
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
