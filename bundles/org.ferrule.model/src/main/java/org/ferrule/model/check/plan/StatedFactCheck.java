/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.HashSet;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StatedFact;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** A case states a fact once. */
final class StatedFactCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof CaseDocument file) {
            Set<String> stated = new HashSet<>();
            for (StatedFact fact : file.getFacts()) {
                if (fact.getFact() != null && !stated.add(fact.getFact())) {
                    examination.add(ProblemCode.STATED_TWICE, fact, Literals.STATED_FACT__FACT, fact.getFact());
                }
            }
        }
    }
}
