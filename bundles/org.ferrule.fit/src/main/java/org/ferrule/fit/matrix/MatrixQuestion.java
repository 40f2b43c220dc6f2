/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Terms;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/**
 * The same question for every pair of outer and inner devices.
 *
 * @param outer the lines
 * @param inner the devices inside
 * @param direction how they enter
 * @param reach as in {@link FitQuestion#reach()}
 * @param conditions what else holds for every pair
 * @param rules in force
 * @param solver that answers
 */
public record MatrixQuestion(List<MatrixLine> outer, List<ReadDevice> inner, Direction direction,
        Optional<Length> reach, Conditions conditions, RuleSet rules, FitSolver solver) {

    public MatrixQuestion {
        outer = List.copyOf(outer);
        inner = List.copyOf(inner);
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(conditions, "conditions");
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(solver, "solver");
    }

    /** The question about devices that pass alone, straight and unused. */
    public MatrixQuestion(List<MatrixLine> outer, List<ReadDevice> inner, Direction direction, Optional<Length> reach,
            RuleSet rules, FitSolver solver) {
        this(outer, inner, direction, reach, Conditions.NONE, rules, solver);
    }

    /** The question of one cell. */
    public FitQuestion question(int outerIndex, int innerIndex) {
        MatrixLine line = outer.get(outerIndex);
        return new FitQuestion(line.device(), line.lumen(), inner.get(innerIndex), direction, reach,
                conditions, rules);
    }

    /** What all its questions have in common. */
    public Terms terms() {
        return new Terms(direction, reach, conditions, rules);
    }

    FitAnswer answer(int outerIndex, int innerIndex) {
        return solver.answer(question(outerIndex, innerIndex));
    }

    /** Whether what is asked of a pair of unchanged devices is unchanged too. */
    boolean asksTheSameAs(MatrixQuestion other) {
        return direction == other.direction && reach.equals(other.reach)
                && conditions.equals(other.conditions) && rules.equals(other.rules)
                && solver == other.solver;
    }
}
