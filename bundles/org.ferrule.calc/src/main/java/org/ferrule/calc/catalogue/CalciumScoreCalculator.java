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
import org.ferrule.quantity.Length;
import org.ferrule.thresholds.lesion.CalciumScore;

/** The score of calcium in optical coherence tomography. */
final class CalciumScoreCalculator extends WordedCalculator {
    private static final Limits LENGTHS = Limits.fromTo("0 mm", "500 mm");

    private final Parameter<Double> arc = parameter("arc", Kinds.ANGLE, Occurrence.OPTIONAL,
            Limits.fromTo("0 deg", "360 deg"));
    private final Parameter<Length> thickness = parameter("thickness", Kinds.LENGTH, Occurrence.OPTIONAL, LENGTHS);
    private final Parameter<Length> length = parameter("length", Kinds.LENGTH, Occurrence.OPTIONAL, LENGTHS);

    CalciumScoreCalculator() {
        super("calcium-score");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        return PointsAnswer.of(this, new CalciumScore(arguments.find(arc).map(LesionMeasures::degrees),
                arguments.find(thickness).map(LesionMeasures::mm), arguments.find(length).map(LesionMeasures::mm))
                .points());
    }
}
