/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.util.Optional;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.thresholds.Points;

/** The answer of a calculator that adds points up. What is not known counts as if it were there, and is named. */
final class PointsAnswer {
    private static final String YES = "yes";

    private PointsAnswer() {
    }

    /** Tells whether a trait is there, if that was said. */
    static Optional<Boolean> flag(Arguments arguments, Parameter<String> parameter) {
        return arguments.find(parameter).map(YES::equals);
    }

    /** Returns the most points that there may be, with an interval where not all is known. */
    static Calculation of(WordedCalculator calculator, Points points) {
        Calculation answer = calculator.answer("points", BigDecimal.valueOf(points.most()), "1");
        return points.unknown().isEmpty() ? answer
                : answer.within(BigDecimal.valueOf(points.least()), BigDecimal.valueOf(points.most()))
                        .with(Detail.texts("notSaid", points.unknown()));
    }

    /** Returns one name or the names of both ends. */
    static String range(WordedCalculator calculator, Enum<?> least, Enum<?> most) {
        String low = calculator.say("name." + least.name());
        String high = calculator.say("name." + most.name());
        return least == most ? low : calculator.say("range", low, high);
    }
}
