/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.mechanics.HoopStress;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/** The stress round the wall of a balloon or a tube. */
final class HoopCalculator extends WordedCalculator {
    private static final Limits ABOVE_ZERO = Limits.above("0 mm");

    private final Parameter<Pressure> pressure = parameter("pressure", Kinds.PRESSURE, Occurrence.REQUIRED,
            Limits.from("0 atm"));
    private final Parameter<Length> diameter = parameter("diameter", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);
    private final Parameter<Length> wall = parameter("wall", Kinds.LENGTH, Occurrence.REQUIRED, ABOVE_ZERO);

    HoopCalculator() {
        super("hoop");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        double pressureMPa = arguments.get(pressure).in(PressureUnit.MEGAPASCAL);
        double radiusMm = arguments.get(diameter).mm() / 2;
        double wallMm = arguments.get(wall).mm();
        return answer("thick", up(HoopStress.thickMPa(pressureMPa, radiusMm, wallMm)), "MPa").with(
                Detail.of("thinWallMPa", up(HoopStress.thinMPa(pressureMPa, radiusMm, wallMm))),
                Detail.of("tensionNPerMm", up(HoopStress.tensionNPerMm(pressureMPa, radiusMm))));
    }

    private static BigDecimal up(double value) {
        return Rounded.digits(value, RoundingMode.CEILING);
    }
}
