/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.lesion;

import java.math.BigDecimal;
import java.util.Optional;

/** What makes a lesion more than one of type A, after the task force of 1988. */
public enum LesionTrait {
    /** A length of 10 to 20 mm. */
    TUBULAR(false),
    /** Eccentric. */
    ECCENTRIC(false),
    /** The segment before it is moderately tortuous. */
    MODERATE_TORTUOSITY(false),
    /** A bend of 45 to 90 degrees. */
    ANGULATED(false),
    /** An irregular contour. */
    IRREGULAR(false),
    /** Moderate to heavy calcium. */
    CALCIFIED(false),
    /** Occluded for less than three months. */
    RECENT_OCCLUSION(false),
    /** At an ostium. */
    OSTIAL(false),
    /** A bifurcation that needs two wires. */
    BIFURCATION(false),
    /** Some thrombus. */
    THROMBUS(false),
    /** Longer than 20 mm. */
    DIFFUSE(true),
    /** The segment before it is excessively tortuous. */
    EXCESSIVE_TORTUOSITY(true),
    /** A bend of more than 90 degrees. */
    EXTREMELY_ANGULATED(true),
    /** Occluded for more than three months, or with bridging collaterals. */
    OLD_OCCLUSION(true),
    /** A major side branch cannot be protected. */
    BRANCH_AT_RISK(true),
    /** A degenerated vein graft with friable lesions. */
    DEGENERATED_GRAFT(true);

    private static final BigDecimal TUBULAR_FROM = BigDecimal.valueOf(10);
    private static final BigDecimal DIFFUSE_BEYOND = BigDecimal.valueOf(20);
    private static final BigDecimal ANGULATED_FROM = BigDecimal.valueOf(45);
    private static final BigDecimal EXTREME_BEYOND = BigDecimal.valueOf(90);

    private final boolean ofTypeC;

    LesionTrait(boolean ofTypeC) {
        this.ofTypeC = ofTypeC;
    }

    /** Tells whether it alone makes type C. */
    public boolean isOfTypeC() {
        return ofTypeC;
    }

    /**
     * Returns what a length adds.
     *
     * @throws IllegalArgumentException naming a length that is out of range
     */
    public static Optional<LesionTrait> ofLength(BigDecimal mm) {
        Ranges.checkLength("length", Optional.of(mm));
        return between(mm, TUBULAR_FROM, TUBULAR, DIFFUSE_BEYOND, DIFFUSE);
    }

    /**
     * Returns what a bend adds.
     *
     * @throws IllegalArgumentException naming a bend that is out of range
     */
    public static Optional<LesionTrait> ofBend(BigDecimal degrees) {
        Ranges.checkDegrees("bend", Optional.of(degrees));
        return between(degrees, ANGULATED_FROM, ANGULATED, EXTREME_BEYOND, EXTREMELY_ANGULATED);
    }

    private static Optional<LesionTrait> between(BigDecimal value, BigDecimal from, LesionTrait moderate,
            BigDecimal beyond, LesionTrait extreme) {
        if (value.compareTo(beyond) > 0) {
            return Optional.of(extreme);
        }
        return value.compareTo(from) >= 0 ? Optional.of(moderate) : Optional.empty();
    }
}
