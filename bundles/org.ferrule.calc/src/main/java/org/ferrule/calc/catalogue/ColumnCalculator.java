/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.RoundingMode;
import java.util.Locale;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.mechanics.ColumnEnds;
import org.ferrule.quantity.Length;

/** The push at which a free length of wire or shaft buckles. */
final class ColumnCalculator extends WordedCalculator {
    private final ShaftParameters shaft = new ShaftParameters(this);
    private final Parameter<Length> length = parameter("length", Kinds.LENGTH, Occurrence.REQUIRED,
            Limits.above("0 mm"));
    private final Parameter<String> ends = parameter("ends", Kinds.oneOf("pinned", "fixed", "fixed-and-free"),
            Limits.NONE, "fixed-and-free");

    ColumnCalculator() {
        super("column");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        ColumnEnds held = ColumnEnds.valueOf(arguments.get(ends).toUpperCase(Locale.ROOT).replace('-', '_'));
        double stiffness = shaft.stiffnessNmm2(arguments);
        double force = held.bucklingForceN(stiffness, arguments.get(length).mm());
        return answer("force", Rounded.digits(force, RoundingMode.FLOOR), "N")
                .with(Detail.of("stiffnessNmm2", Rounded.digits(stiffness, RoundingMode.HALF_EVEN)));
    }
}
