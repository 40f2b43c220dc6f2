/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.result;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.PressureUnit;

/** The answer of a calculator in lines for people. */
public final class CalculationText {

    private CalculationText() {
    }

    /** Returns the value with its interval and details, an empty line, and what the answer rests on. */
    public static List<String> write(Calculation answer) {
        String unit = symbol(answer.unit());
        List<String> lines = new ArrayList<>();
        lines.add(answer.what() + ": " + answer.value().map(value -> number(value) + unit)
                .orElseGet(() -> "no answer. " + answer.refusal().orElseThrow().text()));
        answer.interval().ifPresent(interval -> lines.add("  between " + number(interval.low()) + unit + " and "
                + number(interval.high()) + unit));
        answer.details().forEach(detail -> lines.addAll(lines(detail)));
        lines.add("");
        lines.add("Method: " + answer.basis().method());
        lines.add("Validity: " + answer.basis().validity());
        lines.add("Source: " + answer.basis().source());
        lines.add(answer.basis().caution());
        return lines;
    }

    private static List<String> lines(Detail detail) {
        if (detail.value() instanceof DetailValue.Items items && isOfGroups(items)) {
            return Stream.concat(Stream.of("  " + DetailWords.of(detail.name()).words() + ":"),
                    items.values().stream().map(item -> "    " + text(item))).toList();
        }
        DetailWords words = DetailWords.of(detail.name());
        return List.of("  " + words.words() + ": " + text(detail.value()) + words.unit());
    }

    private static boolean isOfGroups(DetailValue.Items items) {
        return items.values().stream().anyMatch(DetailValue.Group.class::isInstance);
    }

    private static String text(DetailValue value) {
        if (value instanceof DetailValue.Number number) {
            return number(number.value());
        } else if (value instanceof DetailValue.Text text) {
            return text.value();
        } else if (value instanceof DetailValue.Flag flag) {
            return flag.value() ? "yes" : "no";
        } else if (value instanceof DetailValue.Items items) {
            return items.values().stream().map(CalculationText::text).collect(Collectors.joining(", "));
        }
        return ((DetailValue.Group) value).values().stream().map(CalculationText::part)
                .collect(Collectors.joining(", "));
    }

    private static String part(Detail detail) {
        DetailWords words = DetailWords.of(detail.name());
        return words.words() + " " + text(detail.value()) + words.unit();
    }

    private static String number(BigDecimal value) {
        return value.toPlainString();
    }

    /** What people write for a UCUM code, with a blank before it; nothing for a bare number. */
    private static String symbol(String ucum) {
        Stream<String> lengths = Arrays.stream(LengthUnit.values()).filter(unit -> unit.ucum().equals(ucum))
                .map(LengthUnit::symbol);
        Stream<String> pressures = Arrays.stream(PressureUnit.values()).filter(unit -> unit.ucum().equals(ucum))
                .map(PressureUnit::symbol);
        return ucum.equals("1") ? ""
                : " " + Stream.concat(lengths, pressures).findFirst().orElse(ucum.replace('.', ' '));
    }
}
