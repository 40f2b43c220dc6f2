/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EObject;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.RatioBand;

/** A band of ratios has at least one end, and its ends are in order. */
final class RatioBandCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof RatioBand band) {
            BigDecimal low = band.getLow();
            BigDecimal high = band.getHigh();
            if (low == null && high == null) {
                examination.add(ProblemCode.BAND_WITHOUT_ENDS, band, null);
            } else if (low != null && high != null && low.compareTo(high) > 0) {
                examination.add(ProblemCode.BAND_OUT_OF_ORDER, band, Literals.RATIO_BAND__HIGH, low.toPlainString(),
                        high.toPlainString());
            }
        }
    }
}
