/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.mechanics.Capstan;

/** What friction in bends lets through, and how two paths compare. */
final class CapstanCalculator extends WordedCalculator {
    private static final Limits NOT_NEGATIVE = Limits.from("0 deg");

    private final Parameter<BigDecimal> friction = parameter("friction", Kinds.numberIn(""), Occurrence.REQUIRED,
            Limits.fromTo("0", "2"));
    private final Parameter<Double> bend = parameter("bend", Kinds.ANGLE, Occurrence.REPEATED, NOT_NEGATIVE);
    private final Parameter<Double> other = parameter("other-bend", Kinds.ANGLE, Occurrence.REPEATED, NOT_NEGATIVE);

    CapstanCalculator() {
        super("capstan");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        double mu = arguments.get(friction).doubleValue();
        double totalDeg = total(arguments.all(bend));
        double arriving = Capstan.arriving(mu, Math.toRadians(totalDeg));
        Calculation answer = answer("share", Rounded.digits(arriving, FLOOR), "1").with(
                Detail.of("ratio", Rounded.digits(Capstan.ratio(mu, Math.toRadians(totalDeg)), CEILING)),
                Detail.of("totalDeg", Rounded.digits(totalDeg, HALF_EVEN)),
                Detail.numbers("arrivingBehindEachBend", along(mu, arguments.all(bend))));
        return arguments.has(other) ? compared(answer, arriving, mu, total(arguments.all(other))) : answer;
    }

    private static Calculation compared(Calculation answer, double arriving, double mu, double otherDeg) {
        double otherArriving = Capstan.arriving(mu, Math.toRadians(otherDeg));
        return answer.with(Detail.of("otherArriving", Rounded.digits(otherArriving, FLOOR)),
                Detail.of("timesTheOther", Rounded.digits(arriving / otherArriving, FLOOR)));
    }

    private static double total(List<Double> degrees) {
        return degrees.stream().mapToDouble(Double::doubleValue).sum();
    }

    private static List<BigDecimal> along(double mu, List<Double> degrees) {
        double[] radians = degrees.stream().mapToDouble(Math::toRadians).toArray();
        return Arrays.stream(Capstan.arrivingAlong(mu, radians)).mapToObj(share -> Rounded.digits(share, FLOOR))
                .toList();
    }
}
