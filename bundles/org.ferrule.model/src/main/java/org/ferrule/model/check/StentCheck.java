/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ResolvedDevice;
import org.ferrule.model.Stent;

/** The limit of dilatation is no less than the nominal diameter. */
final class StentCheck implements DeviceCheck {

    @Override
    public void check(ResolvedDevice resolved, Examination examination) {
        Stent stent = resolved.device().getStent();
        if (stent != null && Lengths.isMore(stent.getDiameter(), stent.getMaximumDiameter())) {
            examination.add(ProblemCode.LIMIT_BELOW_NOMINAL, resolved.statedBy(stent, Literals.STENT__MAXIMUM_DIAMETER),
                    Literals.STENT__MAXIMUM_DIAMETER, stent.getMaximumDiameter().text(), stent.getDiameter().text());
        }
    }
}
