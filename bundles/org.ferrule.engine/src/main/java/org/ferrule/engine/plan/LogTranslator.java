/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.List;
import java.util.Set;

import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.state.Attempt.UsedUnit;
import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelPackage.Literals;

/** Copies what was tried. An attempt of which nobody says how it ended is not counted, but what it used up is. */
final class LogTranslator {
    private final Set<String> moves;
    private final Stock stock;
    private final PlanProblems problems;
    private final PlanFigures figures;

    LogTranslator(Set<String> moves, Stock stock, PlanProblems problems) {
        this.moves = moves;
        this.stock = stock;
        this.problems = problems;
        this.figures = new PlanFigures(problems);
    }

    List<Attempt> translate(List<LoggedAttempt> log) {
        return log.stream().map(this::attempt).toList();
    }

    private Attempt attempt(LoggedAttempt attempt) {
        if (attempt.getMove() == null || !moves.contains(attempt.getMove())) {
            problems.add(attempt, Literals.LOGGED_ATTEMPT__MOVE, attempt.getMove() == null
                    ? "it is not said what was tried"
                    : "no technique and no set-up is called \"" + attempt.getMove() + "\"");
        }
        if (!attempt.isSetOutcome()) {
            problems.add(attempt, Literals.LOGGED_ATTEMPT__OUTCOME, "it is not said how it ended; it is not counted");
        }
        return new Attempt(text(attempt.getMove()), outcome(attempt), figures.costs(attempt),
                attempt.getUnits().stream().map(this::unit).toList(), text(attempt.getRemark()));
    }

    private static Outcome outcome(LoggedAttempt attempt) {
        if (!attempt.isSetOutcome()) {
            return Outcome.GIVEN_UP;
        }
        return switch (attempt.getOutcome()) {
            case CROSSED -> Outcome.CROSSED;
            case FAILED -> Outcome.FAILED;
            case GIVEN_UP -> Outcome.GIVEN_UP;
        };
    }

    private UsedUnit unit(org.ferrule.model.UsedUnit unit) {
        if (unit.getItem() == null || stock.shelf().item(unit.getItem()).isEmpty()) {
            problems.add(unit, Literals.USED_UNIT__ITEM, unit.getItem() == null ? "it is not said what was taken"
                    : "no item on the shelf is called \"" + unit.getItem() + "\"");
        }
        return new UsedUnit(text(unit.getRole()), text(unit.getItem()), text(unit.getLot()));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
