/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.RoundingMode;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Length;
import org.ferrule.statistics.Interference;

/** The chance that one clearance is below zero. */
final class InterferenceCalculator extends WordedCalculator {
    private final Parameter<Length> mean = parameter("mean", Kinds.SIGNED_LENGTH, Occurrence.REQUIRED, Limits.NONE);
    private final Parameter<Length> sd = parameter("sd", Kinds.LENGTH, Occurrence.REPEATED, Limits.from("0 mm"));

    InterferenceCalculator() {
        super("interference");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        if (!arguments.has(sd)) {
            throw arguments.refuse(sd, "is missing: a chance needs a standard deviation that was given or measured");
        }
        double combinedMm = Interference.combined(arguments.all(sd).stream().mapToDouble(Length::mm).toArray());
        double chance = Interference.probability(arguments.get(mean).mm(), combinedMm);
        return answer("chance", Rounded.digits(chance, RoundingMode.CEILING), "1")
                .with(Detail.of("combinedSdMm", Rounded.digits(combinedMm, RoundingMode.CEILING)));
    }
}
