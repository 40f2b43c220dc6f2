/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Conditions;
import org.ferrule.model.Direction;
import org.ferrule.model.ModelPackage.Literals;

/** The conditions of a chart can hold: over a wire nothing else lies in the lumen. */
final class ConditionCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Conditions conditions && conditions.getDirection() == Direction.OVER_WIRE_TAIL) {
            checkAlone(conditions, Literals.CONDITIONS__INSIDE, examination);
            checkAlone(conditions, Literals.CONDITIONS__THROUGH, examination);
        }
    }

    private static void checkAlone(Conditions conditions, EStructuralFeature others, Examination examination) {
        if (conditions.eIsSet(others)) {
            examination.add(ProblemCode.CONDITIONS_EXCLUDE, conditions, others, others.getName(),
                    Direction.OVER_WIRE_TAIL.getLiteral());
        }
    }
}
