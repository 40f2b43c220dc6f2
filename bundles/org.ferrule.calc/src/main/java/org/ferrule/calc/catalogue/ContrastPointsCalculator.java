/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.Map;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.renal.ContrastLimit;
import org.ferrule.thresholds.renal.MehranScore;
import org.ferrule.thresholds.renal.MehranScore.Band;
import org.ferrule.thresholds.renal.MehranScore.Trait;
import org.ferrule.thresholds.renal.RenalFigure;

/** The points of a published score of contrast and kidney, without the shares of its study. */
final class ContrastPointsCalculator extends WordedCalculator {
    private final Parameter<Integer> age = RenalParameters.age(this, Occurrence.REQUIRED);
    private final Parameter<BigDecimal> contrast = parameter("contrast",
            Kinds.quantity(ContrastLimit.VOLUME, "200 mL"), Occurrence.REQUIRED, Limits.NONE);
    private final Parameter<BigDecimal> creatinine = parameter("creatinine",
            RenalParameters.kind(RenalFigure.CREATININE), Occurrence.OPTIONAL, Limits.NONE);
    private final Parameter<BigDecimal> egfr = parameter("egfr", RenalParameters.kind(RenalFigure.EGFR),
            Occurrence.OPTIONAL, Limits.NONE);
    private final Map<Trait, Parameter<String>> traits = new EnumMap<>(Trait.class);

    ContrastPointsCalculator() {
        super("contrast-points");
        for (Trait trait : Trait.values()) {
            traits.put(trait, parameter(trait.word(), Kinds.YES_OR_NO, Occurrence.OPTIONAL, Limits.NONE));
        }
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Map<Trait, Boolean> known = new EnumMap<>(Trait.class);
        traits.forEach((trait, parameter) -> PointsAnswer.flag(arguments, parameter)
                .ifPresent(there -> known.put(trait, there)));
        Points points = MehranScore.points(arguments.get(age), kidney(arguments), arguments.get(contrast), known);
        return PointsAnswer.of(this, points).with(Detail.of("band",
                PointsAnswer.range(this, Band.of(points.least()), Band.of(points.most()))));
    }

    private Map<RenalFigure, BigDecimal> kidney(Arguments arguments) {
        if (arguments.has(creatinine) == arguments.has(egfr)) {
            throw arguments.refuse(egfr, "give either the creatinine or the filtration rate");
        }
        return arguments.has(egfr) ? Map.of(RenalFigure.EGFR, arguments.get(egfr))
                : Map.of(RenalFigure.CREATININE, arguments.get(creatinine));
    }
}
