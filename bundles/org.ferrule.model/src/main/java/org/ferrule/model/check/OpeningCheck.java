/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.Lumen;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.quantity.Dimension;

/** A lumen opens on its device, and its proximal opening is proximal to its distal one. */
final class OpeningCheck implements DeviceCheck {

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        for (Lumen lumen : resolved.device().getLumens()) {
            check(resolved, lumen, Literals.LUMEN__DISTAL_AT, examination);
            check(resolved, lumen, Literals.LUMEN__PROXIMAL_AT, examination);
            Dimension distal = lumen.getDistalAt();
            Dimension proximal = lumen.getProximalAt();
            if (Lengths.isMore(distal, proximal)) {
                examination.add(ProblemCode.REVERSED_STATIONS, resolved.statedBy(lumen, Literals.LUMEN__PROXIMAL_AT),
                        Literals.LUMEN__PROXIMAL_AT, distal.text(), proximal.text());
            }
        }
    }

    private static void check(ResolvedDevice resolved, Lumen lumen, EStructuralFeature feature,
            Examination examination) {
        Dimension at = (Dimension) lumen.eGet(feature);
        Dimension end = resolved.device().getEffectiveLength();
        if (Lengths.isMore(at, end)) {
            examination.add(ProblemCode.OPENING_BEYOND_LENGTH, resolved.statedBy(lumen, feature), feature, at.text(),
                    end.text());
        }
    }
}
