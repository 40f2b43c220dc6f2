/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.math.BigDecimal;
import java.util.List;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.statistics.JointProbability;

/** The chance that at least one of several clearances interferes. */
final class JointCalculator extends WordedCalculator {
    private final Parameter<BigDecimal> chance = parameter("chance", Kinds.SHARE, Occurrence.MAIN_REPEATED,
            Limits.fromTo("0", "1"));

    JointCalculator() {
        super("joint");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        List<Double> chances = arguments.all(chance).stream().map(BigDecimal::doubleValue).toList();
        JointProbability bounds = JointProbability.bounds(chances);
        BigDecimal high = Rounded.digits(bounds.high(), CEILING);
        return answer("joint", high, "1").within(Rounded.digits(bounds.low(), FLOOR), high).with(
                Detail.of("independent", Rounded.digits(JointProbability.independent(chances), CEILING)));
    }
}
