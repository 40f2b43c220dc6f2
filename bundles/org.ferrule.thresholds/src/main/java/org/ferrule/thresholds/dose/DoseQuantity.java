/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.dose;

import org.ferrule.thresholds.Scale;
import org.ferrule.thresholds.Scale.Unit;

/** What is measured of the radiation that a patient has got. Ranges of plausible values are common practice, and wide. */
public enum DoseQuantity {
    /** Air kerma at the reference point in Gy, which the machine shows. It is not the dose of the skin. */
    AIR_KERMA(Scale.of("air kerma", "0", "50", Unit.base("Gy"), Unit.part("mGy", "1000"))),
    /** Peak skin dose in Gy, which has to be worked out. */
    SKIN_DOSE(Scale.of("peak skin dose", "0", "50", Unit.base("Gy"), Unit.part("mGy", "1000"))),
    /** Product of air kerma and area in Gy cm2. */
    KERMA_AREA(Scale.of("product of kerma and area", "0", "5000", Unit.base("Gy.cm2"), Unit.part("cGy.cm2", "100"),
            Unit.part("mGy.cm2", "1000"), Unit.part("uGy.m2", "100"))),
    /** Time of fluoroscopy in minutes. */
    FLUOROSCOPY(
            Scale.of("time of fluoroscopy", "0", "600", Unit.base("min"), Unit.of("h", "60"), Unit.part("s", "60")));

    private final Scale scale;

    DoseQuantity(Scale scale) {
        this.scale = scale;
    }

    /** Returns how it is read and what is plausible. */
    public Scale scale() {
        return scale;
    }
}
