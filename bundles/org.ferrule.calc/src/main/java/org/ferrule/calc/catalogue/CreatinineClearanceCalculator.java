/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.thresholds.renal.CreatinineClearance;

/** Creatinine clearance from age, weight, creatinine and sex. */
final class CreatinineClearanceCalculator extends WordedCalculator {
    private final RenalParameters asked = new RenalParameters(this, Occurrence.REQUIRED);

    CreatinineClearanceCalculator() {
        super("creatinine-clearance");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        CreatinineClearance clearance = asked.clearance(arguments).orElseThrow();
        return answer("clearance", Rounded.digits(clearance.mlPerMin().doubleValue(), FLOOR), "mL/min").with(
                Detail.of("weightKg", Rounded.digits(clearance.weightKg().doubleValue(), HALF_EVEN)),
                Detail.of("creatinineMgPerDl",
                        Rounded.digits(clearance.creatinineMgPerDl().doubleValue(), HALF_EVEN)));
    }
}
