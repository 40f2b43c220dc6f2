/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

import org.ferrule.fit.quick.QuickAnswer;
import org.ferrule.fit.quick.QuickInner;
import org.ferrule.fit.quick.QuickOuter;
import org.ferrule.fit.quick.QuickSolver;

/** Reads cells from devices that were made ready once, and asks the solver about those for which that is not enough. */
final class QuickSource implements CellSource {
    private final SolverSource exact;
    private final QuickSolver solver;
    /** Empty for a line of which the solver has to be asked. */
    private final Optional<QuickOuter>[] lines;
    private final Optional<QuickInner>[] columns;

    private QuickSource(SolverSource exact, QuickSolver solver, Optional<QuickOuter>[] lines,
            Optional<QuickInner>[] columns) {
        this.exact = exact;
        this.solver = solver;
        this.lines = lines;
        this.columns = columns;
    }

    /** A source for a question: a quick one where there can be one. */
    static CellSource of(MatrixQuestion question) {
        SolverSource exact = new SolverSource(question);
        Optional<QuickSolver> solver = QuickSolver.of(question.terms(), exact.solver());
        return solver.isEmpty() ? exact : new QuickSource(exact, solver.get(),
                all(question.outer().size(), i -> outer(solver.get(), question, i)),
                all(question.inner().size(), i -> solver.get().inner(question.inner().get(i))));
    }

    /** A source for the next question, with the devices of this one that are the same. */
    @Override
    public CellSource next(MatrixQuestion question, Comparison comparison) {
        if (!comparison.hasSameTerms()) {
            return of(question);
        }
        Places outer = comparison.lines();
        Places inner = comparison.columns();
        return new QuickSource(new SolverSource(question), solver,
                all(question.outer().size(),
                        i -> outer.same(i) ? lines[outer.former(i)] : outer(solver, question, i)),
                all(question.inner().size(), i -> inner.same(i) ? columns[inner.former(i)]
                        : solver.inner(question.inner().get(i))));
    }

    private static Optional<QuickOuter> outer(QuickSolver solver, MatrixQuestion question, int line) {
        return solver.outer(question.outer().get(line).device(), question.outer().get(line).lumen());
    }

    @SuppressWarnings("unchecked")
    private static <T> Optional<T>[] all(int count, IntFunction<Optional<T>> one) {
        return IntStream.range(0, count).mapToObj(one).toArray(Optional[]::new);
    }

    @Override
    public Reader reader() {
        QuickAnswer answer = solver.pad();
        return (line, column) -> word(line, column, answer);
    }

    private long word(int line, int column, QuickAnswer answer) {
        boolean ready = lines[line].isPresent() && columns[column].isPresent();
        return ready && answer.ask(lines[line].get(), columns[column].get()) ? word(answer)
                : exact.word(line, column);
    }

    private static long word(QuickAnswer answer) {
        long word = CellWord.of(answer.verdictIn(), answer.authorityIn(), answer.verdictOut(), answer.authorityOut(),
                answer.hasConflict(), answer.hasCaution());
        return answer.hasPlace() ? CellWord.at(word, answer.lumenName(), answer.deviceName(), answer.worst(),
                answer.nominal()) : word;
    }
}
