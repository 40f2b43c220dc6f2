/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.Bend;
import org.ferrule.model.Conditions;
import org.ferrule.model.Direction;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Length;

/** The conditions of a chart can hold: a bend has a radius, and nothing is loaded over a wire through an extension. */
final class ConditionCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Bend bend && Lengths.of(bend.getRadius()).filter(Length.ZERO::equals).isPresent()) {
            examination.add(ProblemCode.NOT_MORE_THAN_ZERO, bend, Literals.BEND__RADIUS, bend.getRadius().text());
        }
        if (object instanceof Conditions conditions && conditions.getThrough() != null
                && conditions.getDirection() == Direction.OVER_WIRE_TAIL) {
            examination.add(ProblemCode.CONDITIONS_EXCLUDE, conditions, Literals.CONDITIONS__THROUGH, "through",
                    Direction.OVER_WIRE_TAIL.getLiteral());
        }
    }
}
