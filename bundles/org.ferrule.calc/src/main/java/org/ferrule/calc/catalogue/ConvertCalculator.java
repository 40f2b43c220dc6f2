/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Measure;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.ferrule.quantity.PressureUnit;

/** A length or a pressure in another unit; a gauge is refused. */
final class ConvertCalculator extends WordedCalculator {
    private static final int DECIMALS = 6;
    private static final List<LengthUnit> USUAL_LENGTHS = List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH,
            LengthUnit.FRENCH);
    private static final List<PressureUnit> USUAL_PRESSURES = List.of(PressureUnit.ATMOSPHERE, PressureUnit.BAR,
            PressureUnit.KILOPASCAL, PressureUnit.PSI);

    private final Parameter<Measure> from = parameter("from", Measure.kind(), Occurrence.MAIN, Limits.NONE);
    private final Parameter<String> to = parameter("to", Kinds.oneOf(symbols()), Occurrence.OPTIONAL, Limits.NONE);

    ConvertCalculator() {
        super("convert");
    }

    private static String[] symbols() {
        return Stream.concat(Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol),
                Arrays.stream(PressureUnit.values()).map(PressureUnit::symbol)).toArray(String[]::new);
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Measure measure = arguments.get(from);
        if (measure instanceof Measure.OfLength of) {
            return length(of.length(), arguments);
        }
        return measure instanceof Measure.OfPressure of ? pressure(of.pressure(), arguments)
                : refusal("gauge", "gauge without its table", "mm");
    }

    private Calculation length(Length length, Arguments arguments) {
        LengthUnit unit = unit(arguments, LengthUnit.values(), LengthUnit::symbol).orElse(LengthUnit.MILLIMETRE);
        Calculation answer = converted("length", unit.ucum(), rounding -> length.in(unit, DECIMALS, rounding));
        return answer.with(USUAL_LENGTHS.stream()
                .map(usual -> Detail.of(usual.symbol(), Rounded.plain(length.in(usual, DECIMALS, HALF_EVEN))))
                .toArray(Detail[]::new));
    }

    private Calculation pressure(Pressure pressure, Arguments arguments) {
        PressureUnit unit = unit(arguments, PressureUnit.values(), PressureUnit::symbol)
                .orElse(PressureUnit.ATMOSPHERE);
        Calculation answer = converted("pressure", unit.ucum(), rounding -> in(unit, pressure, rounding));
        return answer.with(USUAL_PRESSURES.stream()
                .map(usual -> Detail.of(usual.symbol(), Rounded.plain(in(usual, pressure, HALF_EVEN))))
                .toArray(Detail[]::new));
    }

    private static BigDecimal in(PressureUnit unit, Pressure pressure, RoundingMode rounding) {
        return pressure.pascals().divide(unit.pascals(), DECIMALS, rounding);
    }

    /** The nearest number, and the ones around it where it is not exact. */
    private Calculation converted(String variant, String ucum, Function<RoundingMode, BigDecimal> rounded) {
        Calculation answer = answer(variant, Rounded.plain(rounded.apply(HALF_EVEN)), ucum);
        BigDecimal low = Rounded.plain(rounded.apply(FLOOR));
        BigDecimal high = Rounded.plain(rounded.apply(CEILING));
        return low.equals(high) ? answer : answer.within(low, high);
    }

    private <T> Optional<T> unit(Arguments arguments, T[] units, Function<T, String> symbol) {
        Optional<T> found = arguments.find(to)
                .flatMap(word -> Arrays.stream(units).filter(unit -> symbol.apply(unit).equals(word)).findFirst());
        if (arguments.has(to) && found.isEmpty()) {
            throw arguments.refuse(to, "is not a unit of what is converted");
        }
        return found;
    }
}
