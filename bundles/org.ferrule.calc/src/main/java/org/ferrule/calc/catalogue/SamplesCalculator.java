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
import org.ferrule.calc.result.Calculation;
import org.ferrule.statistics.SampleSize;

/** Sample sizes without failures. */
final class SamplesCalculator extends WordedCalculator {
    private final Parameter<BigDecimal> confidence = parameter("confidence", Kinds.SHARE, Limits.between("0", "1"),
            "0.95");
    private final Parameter<BigDecimal> coverage = parameter("coverage", Kinds.SHARE, Limits.between("0", "1"),
            "0.95");

    SamplesCalculator() {
        super("samples");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        try {
            int n = SampleSize.zeroFailures(arguments.get(confidence).doubleValue(),
                    arguments.get(coverage).doubleValue());
            return answer("n", BigDecimal.valueOf(n), "1");
        } catch (IllegalArgumentException tooMany) {
            throw arguments.refuse(coverage, tooMany.getMessage());
        }
    }
}
