/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import org.ferrule.thresholds.Scale;
import org.ferrule.thresholds.Scale.Unit;

/** A figure that limits of contrast medium are made of. Plausible ranges are common practice, and wide. */
public enum RenalFigure {
    /** Body weight in kg. A pound is 0.45359237 kg. */
    WEIGHT(Scale.of("body weight", "25", "300", Unit.base("kg"), Unit.of("lb", "0.45359237"))),
    /** Serum creatinine in mg/dL, which is 88.4 umol/L. */
    CREATININE(Scale.of("serum creatinine", "0.2", "20", Unit.base("mg/dL"), Unit.part("umol/L", "88.4"))),
    /** Creatinine clearance in mL/min. */
    CLEARANCE(Scale.of("creatinine clearance", "1", "400", Unit.base("mL/min"))),
    /** Estimated glomerular filtration rate in mL/min for 1.73 m2, as the laboratory reports it. */
    EGFR(Scale.of("estimated filtration rate", "1", "200", Unit.base("mL/min"), Unit.of("mL/min/1.73m2", "1"))),
    /** Iodine in the contrast medium, in g/mL. */
    IODINE(Scale.of("iodine concentration", "0.1", "0.5", Unit.base("g/mL"), Unit.part("mg/mL", "1000")));

    private final Scale scale;

    RenalFigure(Scale scale) {
        this.scale = scale;
    }

    /** Returns how it is read and what is plausible. */
    public Scale scale() {
        return scale;
    }
}
