/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

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
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;

/** The smallest lumen round several shafts. */
final class PackCalculator extends WordedCalculator {
    /** Bounds as close as this differ by the rounding of a root only. */
    private static final Length ROUNDING = new Length(1);
    private static final int DECIMALS = 6;
    private static final int MOST_IN_CLOSED_FORM = 3;

    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.MAIN_REPEATED,
            Limits.above("0 mm"));

    PackCalculator() {
        super("pack");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Enclosure enclosure = enclosure(arguments);
        Calculation answer = answer(method(enclosure), Rounded.mm(enclosure.upperDiameter(), CEILING), "mm").with(
                Detail.groups("positions", enclosure.discs().stream().map(PackCalculator::position).toList()));
        return enclosure.gap().compareTo(ROUNDING) <= 0 ? answer
                : answer.within(Rounded.mm(enclosure.lowerDiameter(), FLOOR),
                        Rounded.mm(enclosure.upperDiameter(), CEILING));
    }

    private static String method(Enclosure enclosure) {
        if (enclosure.discs().size() <= MOST_IN_CLOSED_FORM) {
            return "closed";
        }
        return enclosure.gap().compareTo(ROUNDING) > 0 ? "search" : "proved";
    }

    private Enclosure enclosure(Arguments arguments) {
        try {
            return EnclosingCircle.discs(arguments.all(device));
        } catch (IllegalArgumentException tooMany) {
            throw ArgumentException.of(device.name(), tooMany.getMessage());
        }
    }

    private static List<Detail> position(PlacedDisc disc) {
        return List.of(Detail.of("x", Rounded.decimals(disc.xMm(), DECIMALS, HALF_EVEN)),
                Detail.of("y", Rounded.decimals(disc.yMm(), DECIMALS, HALF_EVEN)),
                Detail.of("diameter", Rounded.mm(disc.diameter(), CEILING)));
    }
}
