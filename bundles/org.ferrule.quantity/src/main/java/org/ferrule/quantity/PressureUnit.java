/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A unit in which inflation pressures are printed. Sizes after UCUM essence 2.2, except the millimetre of mercury,
 * which is the conventional one of 133.322387415 Pa (BS 350, from memory).
 */
public enum PressureUnit {
    /** Standard atmosphere, exactly 101325 Pa. */
    ATMOSPHERE("atm", "atm", new BigDecimal("101325"), Set.of("atm", "ATM")),
    /** Bar, exactly 100 kPa. */
    BAR("bar", "bar", new BigDecimal("100000"), Set.of("bar", "BAR")),
    /** Kilopascal. */
    KILOPASCAL("kPa", "kPa", new BigDecimal("1000"), Set.of("kPa", "KPa", "kpa")),
    /** Megapascal. */
    MEGAPASCAL("MPa", "MPa", new BigDecimal("1000000"), Set.of("MPa")),
    /** Pound-force (0.45359237 kg times 9.80665 m/s2) per square inch. */
    PSI("psi", "[psi]", psi(), Set.of("psi", "PSI")),
    /** Millimetre of mercury. */
    MILLIMETRE_OF_MERCURY("mmHg", "mm[Hg]", new BigDecimal("133.322387415"), Set.of("mmHg"));

    private final String symbol;
    private final String ucum;
    private final BigDecimal pascals;
    private final Set<String> spellings;

    PressureUnit(String symbol, String ucum, BigDecimal pascals, Set<String> spellings) {
        this.symbol = symbol;
        this.ucum = ucum;
        this.pascals = pascals;
        this.spellings = spellings;
    }

    private static BigDecimal psi() {
        BigDecimal newtons = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
        return newtons.divide(new BigDecimal("0.0254").pow(2), MathContext.DECIMAL128);
    }

    /** Returns the symbol that Ferrule writes, such as {@code atm}. */
    public String symbol() {
        return symbol;
    }

    /** Returns the case-sensitive UCUM code. */
    public String ucum() {
        return ucum;
    }

    /** Returns the size of one unit in pascals; exact but for psi, which has 34 digits. */
    public BigDecimal pascals() {
        return pascals;
    }

    static Optional<PressureUnit> find(String spelling) {
        return Arrays.stream(values()).filter(unit -> unit.spellings.contains(spelling)).findFirst();
    }

    static String symbols() {
        return Arrays.stream(values()).map(PressureUnit::symbol).collect(Collectors.joining(", "));
    }
}
