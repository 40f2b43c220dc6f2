/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;

import org.ferrule.balloon.ComplianceTable;
import org.ferrule.balloon.InVivoBand;
import org.ferrule.balloon.Inflation;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/** A balloon's diameter at a pressure, or the pressure for a diameter, inside its printed table. */
final class InflateCalculator extends WordedCalculator {
    private static final int DECIMALS_OF_PRESSURE = 4;

    private final Parameter<ComplianceTable.Row> row = parameter("row", Kinds.TABLE_ROW, Occurrence.MAIN_REPEATED,
            Limits.NONE);
    private final Parameter<Pressure> pressure = parameter("pressure", Kinds.PRESSURE, Occurrence.OPTIONAL,
            Limits.from("0 atm"));
    private final Parameter<Length> diameter = parameter("diameter", Kinds.LENGTH, Occurrence.OPTIONAL,
            Limits.above("0 mm"));
    private final Parameter<Pressure> rated = parameter("rated", Kinds.PRESSURE, Occurrence.OPTIONAL,
            Limits.above("0 atm"));

    InflateCalculator() {
        super("inflate");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        if (arguments.has(pressure) == arguments.has(diameter)) {
            throw arguments.refuse(diameter, "either a pressure or a diameter is asked for");
        }
        ComplianceTable table = table(arguments);
        boolean asksDiameter = arguments.has(pressure);
        PressureUnit unit = table.rows().get(0).pressure().unit();
        Inflation inflation = asksDiameter ? table.diameterAt(arguments.get(pressure))
                : table.pressureFor(arguments.get(diameter));
        if (inflation instanceof Inflation.Refused refused) {
            return refusal(asksDiameter ? "diameter" : "pressure", word(refused.code()),
                    asksDiameter ? "mm" : unit.ucum(), refused.asked(), refused.bound());
        }
        return withRoomToBurst((Inflation.Point) inflation, asksDiameter, unit, table.ratedBurst());
    }

    private ComplianceTable table(Arguments arguments) {
        try {
            return new ComplianceTable(arguments.all(row), arguments.find(rated));
        } catch (IllegalArgumentException outOfOrder) {
            throw ArgumentException.of(row.name(), outOfOrder.getMessage());
        }
    }

    private Calculation withRoomToBurst(Inflation.Point point, boolean asksDiameter, PressureUnit unit,
            Optional<Pressure> burst) {
        Calculation answer = asksDiameter ? diameter(point) : answer("pressure", in(unit, point.pascals(), FLOOR),
                unit.ucum());
        return burst.isEmpty() ? answer : answer.with(Detail.of("belowRatedBurst" + suffix(unit),
                in(unit, burst.get().pascals().subtract(point.pascals()), FLOOR)));
    }

    private Calculation diameter(Inflation.Point point) {
        InVivoBand band = InVivoBand.of(point.diameter());
        return answer("diameter", Rounded.mm(point.diameter(), CEILING), "mm").with(
                Detail.of("inVivoLowMm", Rounded.mm(band.low(), FLOOR)),
                Detail.of("inVivoHighMm", Rounded.mm(band.high(), CEILING)),
                Detail.of("inVivoNote", say("in-vivo", InVivoBand.SOURCE)));
    }

    private static BigDecimal in(PressureUnit unit, BigDecimal pascals, RoundingMode rounding) {
        return Rounded.plain(pascals.divide(unit.pascals(), DECIMALS_OF_PRESSURE, rounding));
    }

    private static String suffix(PressureUnit unit) {
        return unit.symbol().substring(0, 1).toUpperCase(Locale.ROOT) + unit.symbol().substring(1);
    }

    private static String word(Enum<?> code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
