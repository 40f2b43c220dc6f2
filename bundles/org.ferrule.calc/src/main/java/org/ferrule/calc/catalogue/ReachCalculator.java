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
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** What remains of a device beyond the tip of its guide. */
final class ReachCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 cm");

    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> guide = parameter("guide", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> valve = parameter("valve", Kinds.LENGTH, Limits.from("0 cm"), "8 cm");
    private final Parameter<Length> port = parameter("port", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);
    private final Parameter<Length> offset = parameter("offset", Kinds.LENGTH, Limits.from("0 cm"), "0 cm");
    private final Parameter<Length> needed = parameter("needed", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);

    ReachCalculator() {
        super("reach");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Length byLength = arguments.get(device).minus(arguments.get(guide)).minus(arguments.get(valve));
        // A rapid-exchange port that leaves the guide lets the wire prolapse.
        Length tip = arguments.find(port).map(byLength::min).orElse(byLength);
        Length reach = tip.minus(arguments.get(offset));
        Calculation answer = answer("reach", cm(reach), LengthUnit.CENTIMETRE.ucum())
                .with(Detail.of("limitedBy", tip.equals(byLength) ? "length" : "exit port"));
        Optional<Length> asked = arguments.find(needed);
        return asked.isEmpty() ? answer
                : answer.with(Detail.of("reaches", reach.compareTo(asked.get()) >= 0),
                        Detail.of("spareCm", cm(reach.minus(asked.get()))));
    }

    private static BigDecimal cm(Length length) {
        return Rounded.in(LengthUnit.CENTIMETRE, length, RoundingMode.FLOOR);
    }
}
