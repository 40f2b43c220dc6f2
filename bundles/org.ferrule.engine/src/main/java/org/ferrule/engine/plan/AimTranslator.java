/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

import org.ferrule.escalation.state.Aim;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.model.CaseAim;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Costs;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;

/** Reads what is to be spared. */
final class AimTranslator {
    private final PlanProblems problems;
    private final PlanFigures figures;

    AimTranslator(PlanProblems problems) {
        this.problems = problems;
        this.figures = new PlanFigures(problems);
    }

    /** The aim of a case; without a cost of stopping, stopping costs nothing and nothing is worth a try. */
    Aim translate(CaseDocument file) {
        CaseAim aim = file.getAim() == null ? ModelFactory.eINSTANCE.createCaseAim() : file.getAim();
        if (aim.getStoppingCost() == null) {
            problems.add(file, Literals.CASE_DOCUMENT__AIM,
                    "it is not said what stopping costs, so that no step is worth its cost");
        }
        return new Aim(Resource.ofWord(aim.getObjective().getLiteral()),
                figures.amount(aim, Literals.CASE_AIM__STOPPING_COST), budgets(aim.getBudgets()),
                aim.isBudgetsLimit(), aim.isTiersFirst(), aim.isOneNewRiskAStep(), discount(aim));
    }

    private Map<Resource, Double> budgets(Costs budgets) {
        Map<Resource, Double> limits = new EnumMap<>(Resource.class);
        if (budgets != null) {
            put(limits, Resource.TIME, figures.optionalAmount(budgets, Literals.COSTED__MINUTES));
            put(limits, Resource.CONTRAST, figures.optionalAmount(budgets, Literals.COSTED__CONTRAST_ML));
            put(limits, Resource.DOSE, figures.optionalAmount(budgets, Literals.COSTED__DOSE_MGY));
            put(limits, Resource.MONEY, figures.optionalAmount(budgets, Literals.COSTED__MONEY));
        }
        return limits;
    }

    private static void put(Map<Resource, Double> limits, Resource resource, OptionalDouble amount) {
        amount.ifPresent(value -> limits.put(resource, value));
    }

    private double discount(CaseAim aim) {
        if (aim.getSameAxisDiscount() == null) {
            return 1;
        }
        double discount = aim.getSameAxisDiscount().doubleValue();
        if (!(discount > 0) || discount > 1) {
            problems.add(aim, Literals.CASE_AIM__SAME_AXIS_DISCOUNT,
                    aim.getSameAxisDiscount().toPlainString() + " does not lie above 0 and up to 1; none is made");
            return 1;
        }
        return discount;
    }
}
