/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.lesion;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.Points.Item;
import org.ferrule.thresholds.Source;
import org.ferrule.thresholds.Threshold;

/**
 * The score of calcium in optical coherence tomography, zero to four points. Empty is what is not known.
 *
 * @param arcDeg the largest angle that calcium takes up, 0 to 360 degrees
 * @param thicknessMm its largest thickness in mm
 * @param lengthMm its length in mm
 */
public record CalciumScore(Optional<BigDecimal> arcDeg, Optional<BigDecimal> thicknessMm,
        Optional<BigDecimal> lengthMm) {
    /** Where it was published. */
    public static final Source SOURCE = Source.seen("Fujino et al., EuroIntervention 2018, EIJ-D-17-00962");
    /** The angle that adds two points. */
    public static final Threshold ARC = Threshold.beyond("180");
    /** The thickness that adds a point. */
    public static final Threshold THICKNESS = Threshold.beyond("0.5");
    /** The length that adds a point. */
    public static final Threshold LENGTH = Threshold.beyond("5");

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException naming an angle, a thickness or a length that is out of range
     */
    public CalciumScore {
        Ranges.checkFullCircle("angle of calcium", arcDeg);
        Ranges.checkLength("thickness of calcium", thicknessMm);
        Ranges.checkLength("length of calcium", lengthMm);
    }

    /** Returns the points. */
    public Points points() {
        return new Points(List.of(Item.of("arc", 2, arcDeg.map(ARC::isReachedBy)),
                Item.of("thickness", 1, thicknessMm.map(THICKNESS::isReachedBy)),
                Item.of("length", 1, lengthMm.map(LENGTH::isReachedBy))));
    }
}
