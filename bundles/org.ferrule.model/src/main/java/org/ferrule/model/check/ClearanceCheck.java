/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ClearanceRule;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RuleSet;

/** A rule set has the clearance that holds where no other does, and never two for the same kinds. */
final class ClearanceCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof RuleSet rules) {
            Set<List<Set<DeviceKind>>> cases = new HashSet<>();
            for (ClearanceRule rule : rules.getClearances()) {
                if (!cases.add(List.of(Set.copyOf(rule.getOuter()), Set.copyOf(rule.getInner())))) {
                    examination.add(ProblemCode.COMPETING_RULES, rule, null);
                }
            }
            if (!cases.contains(List.of(Set.of(), Set.of()))) {
                examination.add(ProblemCode.MISSING_DEFAULT_CLEARANCE, rules, Literals.RULE_SET__CLEARANCES);
            }
        }
    }
}
