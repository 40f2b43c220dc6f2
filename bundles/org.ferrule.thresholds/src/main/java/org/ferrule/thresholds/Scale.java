/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a quantity is read: a number with its unit, within what is plausible. What is not plausible is refused, because a
 * number in the wrong unit is likelier than such a patient; it is never taken for another unit.
 *
 * @param name what it is, in words
 * @param units the units that are read; the first is the one that values are in
 * @param least the smallest plausible value
 * @param most the largest plausible value
 */
public record Scale(String name, List<Unit> units, BigDecimal least, BigDecimal most) {
    private static final Pattern TEXT = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,9})?|\\.[0-9]{1,9})\\s*(\\S.*)?");
    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final MathContext SHOWN = new MathContext(3);

    /** Copies the list. */
    public Scale {
        units = List.copyOf(units);
    }

    /**
     * A unit.
     *
     * @param symbol what is written, in the spelling of UCUM where it has one
     * @param times times how many of the first unit it is
     * @param over divided by how many
     */
    public record Unit(String symbol, BigDecimal times, BigDecimal over) {

        /** The unit that values are in. */
        public static Unit base(String symbol) {
            return new Unit(symbol, BigDecimal.ONE, BigDecimal.ONE);
        }

        /** So many of the first unit. */
        public static Unit of(String symbol, String times) {
            return new Unit(symbol, new BigDecimal(times), BigDecimal.ONE);
        }

        /** So many go into the first unit. */
        public static Unit part(String symbol, String over) {
            return new Unit(symbol, BigDecimal.ONE, new BigDecimal(over));
        }

        private BigDecimal toBase(BigDecimal number) {
            return number.multiply(times).divide(over, DIGITS);
        }
    }

    /** A scale with its plausible range in its first unit. */
    public static Scale of(String name, String least, String most, Unit... units) {
        return new Scale(name, Arrays.asList(units), new BigDecimal(least), new BigDecimal(most));
    }

    /** Returns the unit that values are in. */
    public String unit() {
        return units.get(0).symbol();
    }

    /**
     * Reads a number with its unit.
     *
     * @return the value in the first unit, rounded to 16 digits
     * @throws IllegalArgumentException telling what is wrong, if there is no number, no known unit or no plausible value
     */
    public BigDecimal read(String text) {
        Matcher matcher = TEXT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("must be a number with a decimal point and a unit (" + symbols() + ")");
        }
        BigDecimal number = new BigDecimal(matcher.group(1));
        Unit unit = unit(matcher.group(2)).orElseThrow(
                () -> new IllegalArgumentException("must have a unit (" + symbols() + ")"));
        BigDecimal value = unit.toBase(number);
        if (!isPlausible(value)) {
            throw new IllegalArgumentException(implausible(number + " " + unit.symbol()) + otherwise(number));
        }
        return value;
    }

    /**
     * Checks a value in the first unit.
     *
     * @throws IllegalArgumentException naming it if it is not plausible
     */
    public BigDecimal check(BigDecimal value) {
        if (!isPlausible(value)) {
            throw new IllegalArgumentException(implausible(value.toPlainString() + " " + unit()));
        }
        return value;
    }

    private boolean isPlausible(BigDecimal value) {
        return value.compareTo(least) >= 0 && value.compareTo(most) <= 0;
    }

    private String implausible(String what) {
        return what + " is no plausible " + name + " (" + least.toPlainString() + " to " + most.toPlainString() + " "
                + unit() + ")";
    }

    /** Which unit was perhaps meant. */
    private String otherwise(BigDecimal number) {
        return units.stream().filter(unit -> isPlausible(unit.toBase(number)))
                .map(unit -> "; " + number + " " + unit.symbol() + " would be "
                        + unit.toBase(number).round(SHOWN).stripTrailingZeros().toPlainString() + " " + unit())
                .findFirst().orElse("");
    }

    private Optional<Unit> unit(String typed) {
        return units.stream().filter(unit -> spelling(unit.symbol()).equals(spelling(String.valueOf(typed))))
                .findFirst();
    }

    /** The letter for micro, a small letter for the litre, the ways to multiply and to square. */
    private static String spelling(String symbol) {
        return symbol.strip().replace('\u00b5', 'u').replace('\u03bc', 'u').replace("\u00b2", "2").replace("^", "")
                .replaceAll("[ .*\u00b7]", "").replaceAll("l\\b", "L");
    }

    private String symbols() {
        return units.stream().map(Unit::symbol).collect(Collectors.joining(", "));
    }
}
