/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.mechanics.TubeSection;
import org.ferrule.quantity.Length;

/** What calculators ask to know the bending stiffness of a shaft. */
final class ShaftParameters {
    private static final double MPA_IN_GPA = 1000;

    private final Parameter<Length> outer;
    private final Parameter<Length> inner;
    private final Parameter<BigDecimal> modulus;

    ShaftParameters(WordedCalculator asks) {
        outer = asks.parameter("outer", Kinds.LENGTH, Occurrence.REQUIRED, Limits.above("0 mm"));
        inner = asks.parameter("inner", Kinds.LENGTH, Limits.from("0 mm"), "0 mm");
        modulus = asks.parameter("modulus", Kinds.numberIn("GPa"), Occurrence.REQUIRED, Limits.above("0"));
    }

    TubeSection section(Arguments arguments) {
        if (arguments.get(inner).compareTo(arguments.get(outer)) >= 0) {
            throw arguments.refuse(inner, "must be below the outer diameter");
        }
        return new TubeSection(outerMm(arguments), arguments.get(inner).mm());
    }

    double outerMm(Arguments arguments) {
        return arguments.get(outer).mm();
    }

    double stiffnessNmm2(Arguments arguments) {
        return section(arguments).stiffnessNmm2(arguments.get(modulus).doubleValue() * MPA_IN_GPA);
    }
}
