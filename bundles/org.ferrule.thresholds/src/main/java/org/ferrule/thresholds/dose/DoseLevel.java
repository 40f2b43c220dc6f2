/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.dose;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.thresholds.Threshold;

/**
 * A level of a dose at which something has to be done or said.
 *
 * @param id its word, by which texts name it
 * @param quantity what is measured
 * @param threshold the level, in the unit of the quantity
 * @param every after how much more it comes again, if it does
 */
public record DoseLevel(String id, DoseQuantity quantity, Threshold threshold, Optional<BigDecimal> every) {

    /**
     * Checks the step.
     *
     * @throws IllegalArgumentException naming it if it is not above zero
     */
    public DoseLevel {
        if (every.filter(step -> step.signum() <= 0).isPresent()) {
            throw new IllegalArgumentException("not a step: " + every.get());
        }
    }

    /** A level that is reached once. */
    public static DoseLevel once(String id, DoseQuantity quantity, Threshold threshold) {
        return new DoseLevel(id, quantity, threshold, Optional.empty());
    }

    /** A level that comes again. */
    public static DoseLevel again(String id, DoseQuantity quantity, Threshold threshold, String every) {
        return new DoseLevel(id, quantity, threshold, Optional.of(new BigDecimal(every)));
    }

    /** Returns how many times a dose has reached it. */
    public int timesReached(BigDecimal dose) {
        if (!threshold.isReachedBy(dose)) {
            return 0;
        }
        return every.map(step -> 1 + fullSteps(dose.subtract(threshold.value()), step)).orElse(1);
    }

    /** Where a step itself does not count, the last full one has not been taken yet. */
    private int fullSteps(BigDecimal beyond, BigDecimal step) {
        return threshold.included() ? beyond.divide(step, 0, RoundingMode.FLOOR).intValue()
                : beyond.divide(step, 0, RoundingMode.CEILING).intValue() - 1;
    }

    /** Returns the dose at which it comes next, or empty if it does not come any more. */
    public Optional<BigDecimal> nextAt(BigDecimal dose) {
        int times = timesReached(dose);
        if (times == 0) {
            return Optional.of(threshold.value());
        }
        return every.map(step -> threshold.value().add(step.multiply(BigDecimal.valueOf(times))));
    }
}
