/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.verdict.Verdict;

/**
 * A solved matrix: an answer for every pair. Immutable; a new question is solved from an old matrix by answering only
 * the pairs in which a device has changed.
 */
public final class FitMatrix {
    private final MatrixQuestion question;
    private final FitAnswer[][] answers;
    private final List<CellChange> changes;

    private FitMatrix(MatrixQuestion question, FitAnswer[][] answers, List<CellChange> changes) {
        this.question = question;
        this.answers = answers;
        this.changes = List.copyOf(changes);
    }

    /**
     * Solves a matrix.
     *
     * @throws SolveCancelledException when the progress says so
     */
    public static FitMatrix solve(MatrixQuestion question, Progress progress) {
        return new Solving(question, Optional.empty(), progress).run();
    }

    /**
     * Solves a question, taking over every answer whose devices and conditions are the same objects as before.
     *
     * @throws SolveCancelledException when the progress says so
     */
    public FitMatrix resolve(MatrixQuestion next, Progress progress) {
        return new Solving(next, Optional.of(this), progress).run();
    }

    public MatrixQuestion question() {
        return question;
    }

    /** The answer of one cell. */
    public FitAnswer answer(int outerIndex, int innerIndex) {
        return answers[outerIndex][innerIndex];
    }

    /** What this matrix answers differently from the one that it was solved from; empty for a first one. */
    public List<CellChange> changes() {
        return changes;
    }

    /** How many cells have each verdict going in; every verdict is a key. */
    public Map<Verdict, Integer> counts() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, 0);
        }
        for (FitAnswer[] line : answers) {
            for (FitAnswer answer : line) {
                counts.merge(answer.in().verdict(), 1, Integer::sum);
            }
        }
        return counts;
    }

    /** Tells lines or columns apart; devices of several libraries may share an id, so they are numbered too. */
    private record Key(String id, String lumen, int number) {
        static Key of(String id, String lumen, Map<Key, Integer> seen) {
            return new Key(id, lumen, seen.merge(new Key(id, lumen, 0), 1, Integer::sum));
        }
    }

    /** One run of the solver over a matrix. */
    private static final class Solving {
        private final MatrixQuestion question;
        private final Optional<FitMatrix> former;
        private final Progress progress;
        private final boolean sameConditions;
        private final int[] formerLines;
        private final int[] formerColumns;
        private final List<CellChange> changes = new ArrayList<>();

        Solving(MatrixQuestion question, Optional<FitMatrix> former, Progress progress) {
            this.question = question;
            this.former = former;
            this.progress = progress;
            this.sameConditions = former.isPresent() && question.asksTheSameAs(former.get().question);
            this.formerLines = formerIndexes(lines(question), former.map(m -> lines(m.question)).orElse(List.of()));
            this.formerColumns = formerIndexes(columns(question),
                    former.map(m -> columns(m.question)).orElse(List.of()));
        }

        private static List<Key> lines(MatrixQuestion question) {
            Map<Key, Integer> seen = new HashMap<>();
            return question.outer().stream().map(l -> Key.of(l.device().device().id(), l.lumen().name(), seen))
                    .toList();
        }

        private static List<Key> columns(MatrixQuestion question) {
            Map<Key, Integer> seen = new HashMap<>();
            return question.inner().stream().map(d -> Key.of(d.device().id(), "", seen)).toList();
        }

        private static int[] formerIndexes(List<Key> keys, List<Key> formerKeys) {
            Map<Key, Integer> indexes = new HashMap<>();
            for (Key key : formerKeys) {
                indexes.put(key, indexes.size());
            }
            return keys.stream().mapToInt(key -> indexes.getOrDefault(key, -1)).toArray();
        }

        FitMatrix run() {
            FitAnswer[][] answers = new FitAnswer[question.outer().size()][question.inner().size()];
            for (int line = 0; line < answers.length; line++) {
                if (progress.isCancelled()) {
                    throw new SolveCancelledException();
                }
                solveLine(answers[line], line);
                progress.worked(line + 1, answers.length);
            }
            return new FitMatrix(question, answers, changes);
        }

        private void solveLine(FitAnswer[] answers, int line) {
            boolean sameLine = sameConditions && formerLines[line] >= 0
                    && former.get().question.outer().get(formerLines[line]).device() == question.outer().get(line)
                            .device();
            for (int column = 0; column < answers.length; column++) {
                FitAnswer before = before(line, column);
                boolean same = sameLine && before != null && sameColumn(column);
                answers[column] = same ? before : question.answer(line, column);
                note(line, column, before, answers[column]);
            }
        }

        private FitAnswer before(int line, int column) {
            boolean known = formerLines[line] >= 0 && formerColumns[column] >= 0;
            return known ? former.get().answers[formerLines[line]][formerColumns[column]] : null;
        }

        private boolean sameColumn(int column) {
            return former.get().question.inner().get(formerColumns[column]) == question.inner().get(column);
        }

        private void note(int line, int column, FitAnswer before, FitAnswer after) {
            if (former.isPresent() && before != after && !Objects.equals(before, after)) {
                changes.add(new CellChange(line, column, Optional.ofNullable(before), after));
            }
        }
    }
}
