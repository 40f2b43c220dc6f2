/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StopRule;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** A limit is one of something. */
final class StopRuleCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof StopRule rule && rule.isSetResource() != (rule.getLimit() != null)) {
            examination.add(ProblemCode.LIMIT_WITHOUT_RESOURCE, rule,
                    rule.isSetResource() ? Literals.STOP_RULE__LIMIT : Literals.STOP_RULE__RESOURCE);
        }
    }
}
