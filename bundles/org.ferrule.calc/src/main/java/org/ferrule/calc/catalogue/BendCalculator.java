/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.util.Optional;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.geometry.RigidInBend;
import org.ferrule.quantity.Length;

/** A rigid segment in a bend: what is not given of lumen, radius and length is calculated. */
final class BendCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 mm");

    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> lumen = parameter("lumen", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);
    private final Parameter<Length> radius = parameter("radius", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);
    private final Parameter<Length> length = parameter("length", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);
    private final Parameter<Length> bend = parameter("bend-length", Kinds.LENGTH, Occurrence.OPTIONAL, ABOVE_ZERO);

    BendCalculator() {
        super("bend");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        if (arguments.has(length) && arguments.has(radius)) {
            return lumenNeeded(arguments);
        }
        if (!arguments.has(lumen)) {
            throw arguments.refuse(lumen, "is missing: two of lumen, radius and length are needed");
        }
        if (arguments.has(radius)) {
            return longest(arguments);
        }
        if (!arguments.has(length)) {
            throw arguments.refuse(radius, "is missing: two of lumen, radius and length are needed");
        }
        return leastRadius(arguments);
    }

    private Calculation longest(Arguments arguments) {
        Length around = arguments.get(lumen);
        Length bent = arguments.get(radius);
        if (bent.times(2).compareTo(around) < 0) {
            throw arguments.refuse(radius, "must be at least half of the lumen");
        }
        if (arguments.get(device).compareTo(around) >= 0) {
            return refusal("length", "passes no bend", "mm");
        }
        Length longest = RigidInBend.longest(around, arguments.get(device), bent);
        return answer("length", validity(around, bent, longest, arguments), Rounded.mm(longest, FLOOR), "mm");
    }

    private Calculation lumenNeeded(Arguments arguments) {
        Length segment = arguments.get(length);
        Length bent = arguments.get(radius);
        Length needed = RigidInBend.lumenNeeded(arguments.get(device), segment, bent);
        Calculation answer = answer("lumen", validity(needed, bent, segment, arguments), Rounded.mm(needed, CEILING),
                "mm");
        Optional<Length> given = arguments.find(lumen);
        return given.isEmpty() ? answer
                : answer.with(Detail.of("passes", needed.compareTo(given.get()) <= 0),
                        Detail.of("clearanceMm", Rounded.mm(given.get().minus(needed), FLOOR)));
    }

    private Calculation leastRadius(Arguments arguments) {
        Length around = arguments.get(lumen);
        Length segment = arguments.get(length);
        return RigidInBend.leastRadius(around, arguments.get(device), segment)
                .map(bent -> answer("radius", validity(around, bent, segment, arguments), Rounded.mm(bent, CEILING),
                        "mm"))
                .orElseGet(() -> refusal("radius", "passes no bend", "mm"));
    }

    private String validity(Length around, Length bent, Length segment, Arguments arguments) {
        return RigidInBend.validity(around, bent, arguments.find(bend), segment).name();
    }
}
