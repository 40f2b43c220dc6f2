/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.util.List;

import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.flow.LumenFlow;
import org.ferrule.flow.OpenFraction;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Length;

/** The flow that a lumen lets through beside devices. */
final class FlowCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 mm");

    private final Parameter<Length> lumen = parameter("lumen", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.REPEATED, ABOVE_ZERO);

    FlowCalculator() {
        super("flow");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Length around = arguments.get(lumen);
        List<Length> devices = arguments.all(device);
        if (devices.size() > LumenFlow.MOST_DEVICES) {
            throw ArgumentException.of(device.name(), "at most " + LumenFlow.MOST_DEVICES + " devices");
        }
        Length needed = needed(arguments);
        if (needed.compareTo(around) > 0) {
            return refusal("share", "do not fit together", "1", needed, around);
        }
        OpenFraction left = LumenFlow.interval(around, devices);
        return answer("share", Rounded.digits(left.low(), FLOOR), "1")
                .within(Rounded.digits(left.low(), FLOOR), Rounded.digits(left.high(), CEILING))
                .with(Detail.of("exact", left.exact()));
    }

    private Length needed(Arguments arguments) {
        try {
            return EnclosingCircle.discs(arguments.all(device)).upperDiameter();
        } catch (IllegalArgumentException tooMany) {
            throw ArgumentException.of(device.name(), tooMany.getMessage());
        }
    }
}
