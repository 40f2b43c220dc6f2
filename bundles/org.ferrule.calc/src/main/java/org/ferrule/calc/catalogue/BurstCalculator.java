/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.balloon.BurstStatistics;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/** The pressure that a sample of bursts supports as a rated burst pressure. */
final class BurstCalculator extends WordedCalculator {
    private static final int DECIMALS = 4;

    private final Parameter<Pressure> burst = parameter("burst", Kinds.PRESSURE, Occurrence.REPEATED,
            Limits.above("0 atm"));
    private final Parameter<Integer> n = parameter("n", Kinds.COUNT, Occurrence.OPTIONAL, Limits.from("2"));
    private final Parameter<Pressure> mean = parameter("mean", Kinds.PRESSURE, Occurrence.OPTIONAL,
            Limits.above("0 atm"));
    private final Parameter<Pressure> sd = parameter("sd", Kinds.PRESSURE, Occurrence.OPTIONAL, Limits.from("0 atm"));
    private final Parameter<BigDecimal> confidence = parameter("confidence", Kinds.SHARE, Limits.between("0", "1"),
            String.valueOf(BurstStatistics.CONFIDENCE));
    private final Parameter<BigDecimal> coverage = parameter("coverage", Kinds.SHARE, Limits.fromToBelow("0.5", "1"),
            String.valueOf(BurstStatistics.COVERAGE));

    BurstCalculator() {
        super("burst");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        BurstStatistics bursts = statistics(arguments);
        double bound = bursts.lowerBoundAtm(arguments.get(confidence).doubleValue(),
                arguments.get(coverage).doubleValue());
        Calculation answer = bound <= 0 ? refusal("bound", "spreads too much", "atm")
                : answer("bound", Rounded.decimals(bound, DECIMALS, RoundingMode.FLOOR), "atm");
        answer = answer.with(Detail.of("n", BigDecimal.valueOf(bursts.n())),
                Detail.of("meanAtm", Rounded.digits(bursts.meanAtm(), RoundingMode.HALF_EVEN)),
                Detail.of("sdAtm", Rounded.digits(bursts.sdAtm(), RoundingMode.HALF_EVEN)));
        return bound < 1 ? answer : answer.with(Detail.of("wholeAtm", BigDecimal.valueOf(Math.floor(bound))
                .setScale(0)));
    }

    private BurstStatistics statistics(Arguments arguments) {
        if (arguments.has(burst)) {
            return sample(arguments);
        }
        if (!arguments.has(n) || !arguments.has(mean) || !arguments.has(sd)) {
            throw arguments.refuse(burst, "is missing: give the bursts, or n, mean and sd");
        }
        return new BurstStatistics(arguments.get(n), atm(arguments.get(mean)), atm(arguments.get(sd)));
    }

    private BurstStatistics sample(Arguments arguments) {
        if (arguments.has(n) || arguments.has(mean) || arguments.has(sd)) {
            throw arguments.refuse(burst, "give the bursts, or n, mean and sd, not both");
        }
        if (arguments.all(burst).size() < 2) {
            throw arguments.refuse(burst, "a sample needs two bursts or more");
        }
        return BurstStatistics.of(arguments.all(burst));
    }

    private static double atm(Pressure pressure) {
        return pressure.in(PressureUnit.ATMOSPHERE);
    }
}
