/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.ferrule.balloon.SizingRatio;
import org.ferrule.balloon.SizingRule;
import org.ferrule.balloon.SizingRule.SizedDevice;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Length;

/** The ratio of a balloon or a burr to the vessel, beside published rules. */
final class RatioCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 mm");

    private final Parameter<Length> device = parameter("device", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> vessel = parameter("vessel", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<String> kind = parameter("kind", Kinds.oneOf("balloon", "burr"), Occurrence.REQUIRED,
            Limits.NONE);

    RatioCalculator() {
        super("ratio");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        SizingRatio ratio = new SizingRatio(arguments.get(device), arguments.get(vessel));
        SizedDevice sized = SizedDevice.valueOf(arguments.get(kind).toUpperCase(Locale.ROOT));
        List<List<Detail>> rules = SizingRule.of(sized).stream().map(rule -> describe(rule, ratio)).toList();
        return answer(arguments.get(kind), Rounded.digits(ratio.value(), RoundingMode.CEILING), "1")
                .with(Detail.groups("rules", rules));
    }

    private List<Detail> describe(SizingRule rule, SizingRatio ratio) {
        List<Detail> details = new ArrayList<>();
        details.add(Detail.of("rule", say("rule." + rule.name())));
        rule.low().ifPresent(low -> details.add(Detail.of("low", low)));
        rule.high().ifPresent(high -> details.add(Detail.of("high", high)));
        details.add(Detail.of("standing", ratio.beside(rule).name().toLowerCase(Locale.ROOT)));
        details.add(Detail.of("source", rule.source()));
        details.add(Detail.of("mark", rule.mark()));
        return details;
    }
}
