/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Placement;
import org.ferrule.model.SystemSlot;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** How far something protrudes is said of a guide extension, and of nothing else. */
final class PlacementCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Placement placement && placement.isSetSlot()) {
            boolean extension = placement.getSlot() == SystemSlot.EXTENSION;
            if (extension && placement.getProtrusion() == null) {
                examination.add(ProblemCode.MISSING_PROTRUSION, placement, Literals.PLACEMENT__PROTRUSION);
            } else if (!extension && placement.getProtrusion() != null) {
                examination.add(ProblemCode.CONDITIONS_EXCLUDE, placement, Literals.PLACEMENT__PROTRUSION,
                        Literals.PLACEMENT__PROTRUSION.getName(), placement.getSlot().getLiteral());
            }
        }
    }
}
