/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.mechanics.StiffnessStep;

/** The bending stiffness of a rod or tube, and the step to its neighbour. */
final class StiffnessCalculator extends WordedCalculator {
    private final ShaftParameters shaft = new ShaftParameters(this);
    private final Parameter<BigDecimal> neighbour = parameter("neighbour", Kinds.numberIn("N mm2"),
            Occurrence.OPTIONAL, Limits.above("0"));

    StiffnessCalculator() {
        super("stiffness");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        double stiffness = shaft.stiffnessNmm2(arguments);
        Calculation answer = answer("stiffness", Rounded.digits(stiffness, RoundingMode.HALF_EVEN), "N.mm2");
        Optional<BigDecimal> beside = arguments.find(neighbour);
        return beside.isEmpty() ? answer : withStep(answer, StiffnessStep.ratio(stiffness, beside.get().doubleValue()));
    }

    private static Calculation withStep(Calculation answer, double step) {
        return answer.with(Detail.of("step", Rounded.digits(step, RoundingMode.CEILING)),
                Detail.of("cliff", step > StiffnessStep.FACTOR));
    }
}
