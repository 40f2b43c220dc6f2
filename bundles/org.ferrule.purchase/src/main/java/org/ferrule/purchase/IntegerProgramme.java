/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.optimisation.integer.NodeKey;
import org.ojalgo.type.context.NumberContext;

/**
 * A linear programme in whole numbers, minimised by the library's branch and bound. What the library returns counts only
 * if it is whole and, in whole numbers, fulfils every constraint.
 */
final class IntegerProgramme {
    /** Larger sums are not distinguished safely by the solver's tolerances. */
    static final long LARGEST_SUM = 1_000_000_000L;

    private static final double WHOLE = 1e-4;
    private static final NumberContext NO_GAP = NumberContext.of(14, 9);

    private final List<Long> uppers = new ArrayList<>();
    private final List<Long> weights = new ArrayList<>();
    private final List<Constraint> constraints = new ArrayList<>();
    private final Duration limit;

    /** The sum of some variables, each times a factor, lies between two bounds. */
    private record Constraint(Map<Integer, Long> terms, long lower, long upper) {

        boolean holdsFor(long[] values) {
            long sum = sum(values);
            return lower <= sum && sum <= upper;
        }

        private long sum(long[] values) {
            return terms.entrySet().stream()
                    .mapToLong(term -> Math.multiplyExact(term.getValue(), values[term.getKey()]))
                    .reduce(0, Math::addExact);
        }
    }

    /** What a search brought. */
    enum State {
        /** A solution, and two searches found none that is better. */
        CONFIRMED,
        /** A solution. */
        SOLVED,
        /** Two searches found that there is none. */
        NONE,
        /** No solution, and nothing is known. */
        UNKNOWN
    }

    /**
     * The end of a search.
     *
     * @param state what it brought
     * @param values the variables in their order; empty unless there is a solution
     */
    record Outcome(State state, long[] values) {
        boolean isSolution() {
            return state == State.CONFIRMED || state == State.SOLVED;
        }
    }

    /** Searches end after this time. */
    IntegerProgramme(Duration limit) {
        this.limit = limit;
    }

    /** Adds a variable from 0 to a bound; returns its number. */
    int variable(long upper, long weight) {
        uppers.add(upper);
        weights.add(weight);
        return uppers.size() - 1;
    }

    /** Returns the bound of a variable. */
    long upper(int variable) {
        return uppers.get(variable);
    }

    /** Adds a constraint. */
    void between(long lower, Map<Integer, Long> terms, long upper) {
        constraints.add(new Constraint(Map.copyOf(terms), lower, upper));
    }

    /** Returns what is minimised. */
    long objective(long[] values) {
        return weighted().sum(values);
    }

    private Constraint weighted() {
        Map<Integer, Long> terms = new TreeMap<>();
        for (int i = 0; i < weights.size(); i++) {
            terms.put(i, weights.get(i));
        }
        return new Constraint(terms, 0, 0);
    }

    /**
     * Returns the best solution that is found. It is confirmed if both of the library's linear solvers say that there is
     * none better: by itself each of them has been seen to overlook solutions, in about one of some thousand programmes.
     */
    Outcome minimise() {
        Outcome best = search(Optional.empty());
        while (best.isSolution() && objective(best.values()) > 0) {
            Outcome better = search(Optional.of(objective(best.values()) - 1));
            if (!better.isSolution()) {
                boolean confirmed = better.state() == State.NONE && objective(best.values()) <= LARGEST_SUM;
                return confirmed ? best : new Outcome(State.SOLVED, best.values());
            }
            best = better;
        }
        return best;
    }

    /** A solution whose objective is no more than a bound; none if both linear solvers say so. */
    private Outcome search(Optional<Long> bound) {
        Outcome dense = search(bound, NodeKey.MIN_OBJECTIVE, false);
        if (dense.isSolution()) {
            return dense;
        }
        Outcome sparse = search(bound, NodeKey.DEPTH_FIRST_SEARCH, true);
        return sparse.isSolution() || dense.state() == State.NONE ? sparse : dense;
    }

    private Outcome search(Optional<Long> bound, Comparator<NodeKey> order, boolean sparse) {
        ExpressionsBasedModel model = model(bound);
        model.options.time_abort = limit.toMillis();
        model.options.time_suffice = limit.toMillis();
        model.options.sparse = sparse;
        model.options.integer(strategy(order));
        Optimisation.Result result = model.minimise();
        if (result.getState().isFeasible()) {
            return whole(result).map(values -> new Outcome(State.CONFIRMED, values))
                    .orElse(new Outcome(State.UNKNOWN, new long[0]));
        }
        return new Outcome(result.getState() == Optimisation.State.INFEASIBLE ? State.NONE : State.UNKNOWN,
                new long[0]);
    }

    /** One order of search means one thread, so that the same problem has the same answer. */
    @SuppressWarnings("unchecked") // an array of comparators, which is not written to
    private static IntegerStrategy strategy(Comparator<NodeKey> order) {
        return IntegerStrategy.newConfigurable().withPriorityDefinitions(order).withGapTolerance(NO_GAP);
    }

    private ExpressionsBasedModel model(Optional<Long> bound) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        for (int i = 0; i < uppers.size(); i++) {
            model.newVariable("v" + i).integer(true).lower(0).upper(uppers.get(i).longValue()).weight(weights.get(i));
        }
        for (int i = 0; i < constraints.size(); i++) {
            Constraint constraint = constraints.get(i);
            add(model.newExpression("c" + i), constraint.terms()).lower(constraint.lower()).upper(constraint.upper());
        }
        bound.ifPresent(most -> add(model.newExpression("better"), weighted().terms()).upper(most.longValue()));
        return model;
    }

    private static Expression add(Expression expression, Map<Integer, Long> terms) {
        terms.forEach((variable, factor) -> expression.set(variable.intValue(), factor.longValue()));
        return expression;
    }

    private Optional<long[]> whole(Optimisation.Result result) {
        long[] values = new long[uppers.size()];
        for (int i = 0; i < values.length; i++) {
            double value = result.doubleValue(i);
            values[i] = Math.round(value);
            if (Math.abs(value - values[i]) > WHOLE || values[i] < 0 || values[i] > uppers.get(i)) {
                return Optional.empty();
            }
        }
        return constraints.stream().allMatch(constraint -> constraint.holdsFor(values)) ? Optional.of(values)
                : Optional.empty();
    }
}
