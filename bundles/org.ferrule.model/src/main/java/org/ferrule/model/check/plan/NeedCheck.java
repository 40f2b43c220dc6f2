/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Need;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** A need names one condition. */
final class NeedCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Need need) {
            List<? extends EStructuralFeature> given = Stream
                    .of(Literals.NEED__FACT, Literals.NEED__VESSEL, Literals.NEED__BRANCH).filter(need::eIsSet)
                    .toList();
            if (given.isEmpty()) {
                examination.add(ProblemCode.EMPTY_NEED, need, null);
            } else if (given.size() > 1) {
                examination.add(ProblemCode.CONDITIONS_EXCLUDE, need, given.get(1), given.get(0).getName(),
                        given.get(1).getName());
            }
        }
    }
}
