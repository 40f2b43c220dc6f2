/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.AfterUseRule;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RuleSet;

/** The factors of growth by use are in rising order, and there are never two rules for the same kinds. */
final class GrowthCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof RuleSet rules) {
            Set<Set<DeviceKind>> cases = new HashSet<>();
            for (AfterUseRule rule : rules.getAfterUse()) {
                if (!cases.add(Set.copyOf(rule.getKinds()))) {
                    examination.add(ProblemCode.COMPETING_RULES, rule, null);
                }
                checkOrder(rule, examination);
            }
        }
    }

    private static void checkOrder(AfterUseRule rule, Examination examination) {
        BigDecimal low = rule.getGrowthLow();
        BigDecimal centre = rule.getGrowthCentre();
        BigDecimal high = rule.getGrowthHigh();
        if (low != null && centre != null && high != null
                && (low.compareTo(centre) > 0 || centre.compareTo(high) > 0)) {
            examination.add(ProblemCode.FACTORS_OUT_OF_ORDER, rule, Literals.AFTER_USE_RULE__GROWTH_CENTRE,
                    low.toPlainString(), centre.toPlainString(), high.toPlainString());
        }
    }
}
