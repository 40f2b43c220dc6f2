/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

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
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** How long a wire must be to change a device that runs over its whole length. */
final class ExchangeCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 cm");

    private final Parameter<Length> inBody = parameter("in-body", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> valve = parameter("valve", Kinds.LENGTH, Limits.from("0 cm"), "8 cm");
    private final Parameter<Length> grip = parameter("grip", Kinds.LENGTH, Limits.from("0 cm"), "10 cm");
    private final Parameter<Length> wire = parameter("wire", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);

    ExchangeCalculator() {
        super("exchange");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Length needed = arguments.get(inBody).plus(arguments.get(valve)).plus(arguments.get(device))
                .plus(arguments.get(grip));
        Calculation answer = answer("wire", Rounded.in(LengthUnit.CENTIMETRE, needed, RoundingMode.CEILING),
                LengthUnit.CENTIMETRE.ucum());
        Optional<Length> given = arguments.find(wire);
        return given.isEmpty() ? answer
                : answer.with(Detail.of("longEnough", needed.compareTo(given.get()) <= 0), Detail.of("spareCm",
                        Rounded.in(LengthUnit.CENTIMETRE, given.get().minus(needed), RoundingMode.FLOOR)));
    }
}
