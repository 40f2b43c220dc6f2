/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.quantity.Length;
import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.lesion.OcclusionScore;
import org.ferrule.thresholds.lesion.OcclusionScore.Grade;

/** The J-CTO score of an occlusion. */
final class OcclusionScoreCalculator extends WordedCalculator {
    private final Parameter<String> stump = parameter("blunt-stump", Kinds.YES_OR_NO, Occurrence.OPTIONAL,
            Limits.NONE);
    private final Parameter<String> calcium = parameter("calcification", Kinds.YES_OR_NO, Occurrence.OPTIONAL,
            Limits.NONE);
    private final Parameter<Double> bend = parameter("bend", Kinds.ANGLE, Occurrence.OPTIONAL,
            Limits.fromTo("0 deg", "180 deg"));
    private final Parameter<Length> length = parameter("length", Kinds.LENGTH, Occurrence.OPTIONAL,
            Limits.aboveTo("0 mm", "500 mm"));
    private final Parameter<String> failed = parameter("failed-before", Kinds.YES_OR_NO, Occurrence.OPTIONAL,
            Limits.NONE);

    OcclusionScoreCalculator() {
        super("occlusion-score");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Points points = new OcclusionScore(PointsAnswer.flag(arguments, stump), PointsAnswer.flag(arguments, calcium),
                arguments.find(bend).map(LesionMeasures::degrees), arguments.find(length).map(LesionMeasures::mm),
                PointsAnswer.flag(arguments, failed)).points();
        return PointsAnswer.of(this, points).with(Detail.of("grade",
                PointsAnswer.range(this, Grade.of(points.least()), Grade.of(points.most()))));
    }
}
