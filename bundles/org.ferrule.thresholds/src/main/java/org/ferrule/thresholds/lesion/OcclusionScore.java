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
 * The J-CTO score of a chronic total occlusion: a point for each of five traits. Empty is what is not known.
 *
 * @param bluntStump whether the entry is blunt
 * @param calcified whether there is calcium
 * @param bendDeg the largest bend in degrees, 0 to 180
 * @param lengthMm the occluded length in mm
 * @param failedBefore whether an earlier attempt failed
 */
public record OcclusionScore(Optional<Boolean> bluntStump, Optional<Boolean> calcified, Optional<BigDecimal> bendDeg,
        Optional<BigDecimal> lengthMm, Optional<Boolean> failedBefore) {
    /** Where it was published. */
    public static final Source SOURCE = Source.seen("Morino et al., JACC Cardiovasc Interv 2011;4:213-21");
    /** The bend that adds a point. */
    public static final Threshold BEND = Threshold.beyond("45");
    /** The length that adds a point; pages that quote the paper print "more than". */
    public static final Threshold LENGTH = Threshold.from("20");

    /** How difficult the publication calls a number of points. */
    public enum Grade {
        /** No point. */
        EASY,
        /** One point. */
        INTERMEDIATE,
        /** Two points. */
        DIFFICULT,
        /** Three points and more. */
        VERY_DIFFICULT;

        /** Returns the grade of a number of points, zero or more. */
        public static Grade of(int points) {
            return values()[Math.min(points, values().length - 1)];
        }
    }

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException naming a bend or a length that is out of range
     */
    public OcclusionScore {
        Ranges.checkDegrees("bend", bendDeg);
        Ranges.checkLength("length", lengthMm);
    }

    /** Returns the points. */
    public Points points() {
        return new Points(List.of(Item.of("blunt-stump", 1, bluntStump), Item.of("calcification", 1, calcified),
                Item.of("bend", 1, bendDeg.map(BEND::isReachedBy)),
                Item.of("length", 1, lengthMm.map(LENGTH::isReachedBy)), Item.of("failed-before", 1, failedBefore)));
    }
}
