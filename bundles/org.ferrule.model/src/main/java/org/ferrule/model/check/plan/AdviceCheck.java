/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Advised;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Published;
import org.ferrule.model.StopRule;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** What lies outside the instructions for use says why; techniques, stop rules and publications name their source. */
final class AdviceCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Advised advised) {
            if (advised.getOffLabel() != null && advised.getOffLabel().isBlank()) {
                examination.add(ProblemCode.OFF_LABEL_WITHOUT_REASON, advised, Literals.ADVISED__OFF_LABEL);
            }
            checkSource(advised, advised.getSource(), examination);
        }
        if (object instanceof StopRule rule) {
            checkSource(rule, rule.getSource(), examination);
        }
        if (object instanceof Published published) {
            checkSource(published, published.getSource(), examination);
        }
    }

    private static void checkSource(EObject object, String source, Examination examination) {
        if (source == null) {
            examination.add(ProblemCode.MISSING_SOURCE, object, null);
        }
    }
}
