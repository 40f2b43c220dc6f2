/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.math.RoundingMode;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.statistics.ToleranceStack;
import org.ferrule.statistics.ToleranceStack.Contributor;
import org.ferrule.statistics.ToleranceStack.Range;

/** The gap that a chain of dimensions with tolerances leaves. */
final class StackCalculator extends WordedCalculator {
    private final Parameter<Contributor> contributor = parameter("contributor", Kinds.CONTRIBUTOR,
            Occurrence.MAIN_REPEATED, Limits.NONE);
    private final Parameter<String> unit = parameter("unit", Kinds.oneOf("mm", "in"), Limits.NONE, "mm");

    StackCalculator() {
        super("stack");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        ToleranceStack stack = new ToleranceStack(arguments.all(contributor));
        boolean inches = "in".equals(arguments.get(unit));
        LengthUnit shown = inches ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
        String suffix = inches ? "In" : "Mm";
        Range worst = stack.worstCase();
        Range rss = stack.rootSumSquare();
        return answer("gap", Rounded.in(shown, stack.nominal(), RoundingMode.HALF_EVEN), shown.ucum())
                .within(Rounded.in(shown, worst.low(), FLOOR), Rounded.in(shown, worst.high(), CEILING))
                .with(Detail.of("rssLow" + suffix, Rounded.in(shown, rss.low(), FLOOR)),
                        Detail.of("rssHigh" + suffix, Rounded.in(shown, rss.high(), CEILING)));
    }
}
