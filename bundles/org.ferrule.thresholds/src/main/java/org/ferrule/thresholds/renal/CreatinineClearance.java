/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

import org.ferrule.thresholds.Source;

/**
 * Creatinine clearance after Cockcroft and Gault: (140 - age) weight / (72 creatinine), times 0.85 in women. Made for
 * adults with a steady creatinine; actual weight over-states it in obesity.
 *
 * @param ageYears completed years, 18 to 110
 * @param weightKg body weight
 * @param creatinineMgPerDl serum creatinine
 * @param sex the sex
 */
public record CreatinineClearance(int ageYears, BigDecimal weightKg, BigDecimal creatinineMgPerDl, Sex sex) {
    /** Where the formula was published. */
    public static final Source SOURCE = Source.fromMemory("Cockcroft and Gault, Nephron 1976;16:31");
    /** The youngest age that is taken. */
    public static final int YOUNGEST = 18;
    /** The oldest age that is taken. */
    public static final int OLDEST = 110;
    private static final int AGE_WITHOUT_CLEARANCE = 140;
    private static final BigDecimal DIVISOR = BigDecimal.valueOf(72);
    private static final BigDecimal WOMEN = new BigDecimal("0.85");
    private static final MathContext DOWN = new MathContext(16, RoundingMode.FLOOR);

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException naming the value that is not plausible
     */
    public CreatinineClearance {
        if (ageYears < YOUNGEST || ageYears > OLDEST) {
            throw new IllegalArgumentException(
                    ageYears + " years: the formula is for " + YOUNGEST + " to " + OLDEST + " years");
        }
        RenalFigure.WEIGHT.scale().check(weightKg);
        RenalFigure.CREATININE.scale().check(creatinineMgPerDl);
    }

    /** Returns the clearance in mL/min, rounded down to 16 digits. */
    public BigDecimal mlPerMin() {
        BigDecimal numerator = BigDecimal.valueOf(AGE_WITHOUT_CLEARANCE - (long) ageYears).multiply(weightKg);
        return numerator.multiply(sex == Sex.FEMALE ? WOMEN : BigDecimal.ONE)
                .divide(DIVISOR.multiply(creatinineMgPerDl), DOWN);
    }
}
