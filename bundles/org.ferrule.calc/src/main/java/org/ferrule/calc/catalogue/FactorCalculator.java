/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Rounded;
import org.ferrule.statistics.ToleranceFactor;

/** Tolerance factors of samples. */
final class FactorCalculator extends WordedCalculator {
    private static final String ONE = "one";

    private final Parameter<Integer> n = parameter("n", Kinds.COUNT, Occurrence.REQUIRED, Limits.from("2"));
    private final Parameter<BigDecimal> confidence = parameter("confidence", Kinds.SHARE, Limits.between("0", "1"),
            "0.95");
    private final Parameter<BigDecimal> coverage = parameter("coverage", Kinds.SHARE, Limits.fromToBelow("0.5", "1"),
            "0.95");
    private final Parameter<String> sides = parameter("sides", Kinds.oneOf(ONE, "two"), Limits.NONE, ONE);

    FactorCalculator() {
        super("factor");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        int size = arguments.get(n);
        double sure = arguments.get(confidence).doubleValue();
        double share = arguments.get(coverage).doubleValue();
        double factor = ONE.equals(arguments.get(sides)) ? ToleranceFactor.oneSided(size, sure, share)
                : ToleranceFactor.twoSided(size, sure, share);
        return answer(arguments.get(sides), Rounded.digits(factor, RoundingMode.CEILING), "1");
    }
}
