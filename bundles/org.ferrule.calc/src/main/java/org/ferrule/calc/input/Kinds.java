/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.balloon.ComplianceTable;
import org.ferrule.order.Try;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Meaning;
import org.ferrule.quantity.Offset;
import org.ferrule.quantity.Pressure;
import org.ferrule.statistics.ToleranceStack.Contributor;
import org.ferrule.thresholds.Scale;

/** The kinds of values that calculators ask for. */
public final class Kinds {
    /** A plain length. A minimum, a range or a tolerance is refused, because it is not one length. */
    public static final ValueKind<Length> LENGTH = ValueKind.ordered(Form.LENGTH, "1.2 mm, 0.047 in, 3 Fr",
            Kinds::length);
    /** A length with an optional sign. */
    public static final ValueKind<Length> SIGNED_LENGTH = ValueKind.ordered(Form.SIGNED_LENGTH, "0.05 mm, -0.01 mm",
            text -> Offset.parse(text).value());
    /** A pressure. */
    public static final ValueKind<Pressure> PRESSURE = ValueKind.ordered(Form.PRESSURE, "14 atm, 1418 kPa",
            Pressure::parse, Comparator.comparing(Pressure::pascals));
    /** An angle in degrees. */
    public static final ValueKind<Double> ANGLE = ValueKind.ordered(Form.ANGLE, "180 deg, 3.14 rad", Angles::degrees);
    /** A whole number. */
    public static final ValueKind<Integer> COUNT = ValueKind.ordered(Form.COUNT, "15", Numbers::whole);
    /** A share as a decimal or in percent. */
    public static final ValueKind<BigDecimal> SHARE = ValueKind.ordered(Form.SHARE, "0.95, 95 %", Numbers::share);
    /** A row of a compliance table. */
    public static final ValueKind<ComplianceTable.Row> TABLE_ROW = ValueKind.unordered(Form.TABLE_ROW,
            "8 atm = 3.00 mm", Kinds::row);
    /** A part of a chain of dimensions; a minus sign before it makes the gap smaller. */
    public static final ValueKind<Contributor> CONTRIBUTOR = ValueKind.unordered(Form.TOLERANCED_LENGTH,
            "6.520 in +-0.010, -1.500 in +0.001/-0.002", Kinds::contributor);
    /** The tries of an option: what each costs, and its chance once all before have failed. */
    public static final ValueKind<List<Try>> TRIES = ValueKind.unordered(Form.TRIES, "2:0.5, 3:40 %:10 %",
            Kinds::tries);

    /** Whether something is there. */
    public static final ValueKind<String> YES_OR_NO = oneOf("yes", "no");

    private Kinds() {
    }

    /** A plausible quantity in one of its units, in the first of them. */
    public static ValueKind<BigDecimal> quantity(Scale scale, String hint) {
        return ValueKind.ordered(Form.QUANTITY, hint, scale::read);
    }

    /** A number in one unit, which may be written behind it; nothing behind it if the unit is empty. */
    public static ValueKind<BigDecimal> numberIn(String unit) {
        return ValueKind.ordered(Form.NUMBER, unit.isEmpty() ? "0.2" : "193 " + unit,
                text -> Numbers.decimal(text, unit));
    }

    /** One of several words. */
    public static ValueKind<String> oneOf(String... words) {
        List<String> choices = List.of(words);
        return new ValueKind<>(Form.CHOICE, String.join(", ", choices), choices, text -> {
            if (!choices.contains(text)) {
                throw new IllegalArgumentException("must be one of " + String.join(", ", choices));
            }
            return text;
        }, Optional.empty());
    }

    private static List<Try> tries(String text) {
        String[] parts = text.split(":", -1);
        if (parts.length < 2) {
            throw new IllegalArgumentException("must be a cost and a chance, such as 2:0.5");
        }
        double cost = Numbers.decimal(parts[0], "").doubleValue();
        return Stream.of(parts).skip(1).map(chance -> new Try(cost, Numbers.share(chance).doubleValue())).toList();
    }

    private static Length length(String text) {
        Dimension dimension = Dimension.parse(text);
        if (dimension.centre().isEmpty() || dimension.low().isPresent() || dimension.sample().isPresent()) {
            throw new IllegalArgumentException("must be one plain length");
        }
        return dimension.label();
    }

    private static ComplianceTable.Row row(String text) {
        String[] parts = text.split("[=:]", -1);
        if (parts.length != 2) {
            throw new IllegalArgumentException("must be a pressure and a diameter, such as 8 atm = 3.00 mm");
        }
        return new ComplianceTable.Row(Pressure.parse(parts[0].strip()), Dimension.parse(parts[1].strip()));
    }

    private static Contributor contributor(String text) {
        String stripped = text.strip();
        boolean subtracts = stripped.startsWith("-") || stripped.startsWith("\u2212");
        boolean signed = subtracts || stripped.startsWith("+");
        Dimension dimension = Dimension.parse(signed ? stripped.substring(1) : stripped);
        if (dimension.meaning() == Meaning.SAMPLE || dimension.low().isEmpty() || dimension.high().isEmpty()) {
            throw new IllegalArgumentException("must state its tolerance, such as 6.520 in +-0.010");
        }
        Length low = dimension.low().get();
        Length high = dimension.high().get();
        return new Contributor(dimension.centre().orElse(low.plus(high).dividedBy(2)), low, high, !subtracts);
    }
}
