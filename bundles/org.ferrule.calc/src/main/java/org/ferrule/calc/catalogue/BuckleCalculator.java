/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.mechanics.LumenBuckling;
import org.ferrule.quantity.Length;

/** The push at which a shaft begins to snake in a lumen, straight or bent. */
final class BuckleCalculator extends WordedCalculator {
    private final ShaftParameters shaft = new ShaftParameters(this);
    private final Parameter<Length> lumen = parameter("lumen", Kinds.LENGTH, Occurrence.REQUIRED,
            Limits.above("0 mm"));
    private final Parameter<Length> radius = parameter("radius", Kinds.LENGTH, Occurrence.OPTIONAL,
            Limits.above("0 mm"));
    private final Parameter<BigDecimal> density = parameter("density", Kinds.numberIn("kg/m3"), Limits.above("0"),
            "7900 kg/m3");
    private final Parameter<Double> angle = parameter("angle", Kinds.ANGLE, Limits.aboveTo("0 deg", "90 deg"),
            "90 deg");
    private final Parameter<BigDecimal> force = parameter("force", Kinds.numberIn("N"), Occurrence.OPTIONAL,
            Limits.above("0"));

    BuckleCalculator() {
        super("buckle");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        double clearanceMm = (arguments.get(lumen).mm() - shaft.outerMm(arguments)) / 2;
        if (clearanceMm <= 0) {
            throw arguments.refuse(lumen, "must be above the outer diameter");
        }
        LumenBuckling buckling = new LumenBuckling(shaft.stiffnessNmm2(arguments), clearanceMm);
        return arguments.has(radius) ? bent(buckling, arguments) : straight(buckling, arguments);
    }

    private Calculation bent(LumenBuckling buckling, Arguments arguments) {
        double radiusMm = arguments.get(radius).mm();
        return answer("bent", buckling, buckling.sinusoidalInBendN(radiusMm), buckling.helicalInBendN(radiusMm),
                arguments);
    }

    private Calculation straight(LumenBuckling buckling, Arguments arguments) {
        double weight = shaft.section(arguments).weightNPerMm(arguments.get(density).doubleValue());
        double fromVertical = Math.toRadians(arguments.get(angle));
        return answer("straight", buckling, buckling.sinusoidalInStraightN(weight, fromVertical),
                buckling.helicalInStraightN(weight, fromVertical), arguments);
    }

    private Calculation answer(String variant, LumenBuckling buckling, double sinusoidalN, double helicalN,
            Arguments arguments) {
        double pushN = arguments.find(force).map(BigDecimal::doubleValue).orElse(helicalN);
        return answer(variant, Rounded.digits(sinusoidalN, FLOOR), "N").with(
                Detail.of("helicalN", Rounded.digits(helicalN, FLOOR)),
                Detail.of("atForceN", Rounded.digits(pushN, HALF_EVEN)),
                Detail.of("helixPitchMm", Rounded.digits(buckling.helixPitchMm(pushN), HALF_EVEN)),
                Detail.of("wallForceNPerMm", Rounded.digits(buckling.wallForceNPerMm(pushN), CEILING)),
                Detail.of("stiffnessNmm2", Rounded.digits(buckling.stiffnessNmm2(), HALF_EVEN)));
    }
}
