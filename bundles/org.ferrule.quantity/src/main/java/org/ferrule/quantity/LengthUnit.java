/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A unit in which lengths and diameters of devices are printed. Every unit is a whole number of thirds of a
 * nanometre, so that millimetres, inches and French sizes add up without rounding. Source of the sizes: UCUM essence
 * 2.2 ({@code [in_i]} = 2.54 cm, {@code [Ch]} = mm/3).
 */
public enum LengthUnit {
    /** Millimetre. */
    MILLIMETRE("mm", "mm", 3_000_000L, Set.of("mm")),
    /** Centimetre. */
    CENTIMETRE("cm", "cm", 30_000_000L, Set.of("cm")),
    /** Micrometre, typed as um or with either of the two micro signs of Unicode. */
    MICROMETRE("um", "um", 3_000L, Set.of("um", "\u00b5m", "\u03bcm")),
    /** Metre. */
    METRE("m", "m", 3_000_000_000L, Set.of("m")),
    /** International inch, exactly 25.4 mm; typed as a word or with an inch mark. */
    INCH("in", "[in_i]", 76_200_000L, Set.of("in", "In", "IN", "inch", "inches", "\"", "\u2033", "\u201d")),
    /** French (Charriere), exactly a third of a millimetre of diameter. */
    FRENCH("Fr", "[Ch]", 1_000_000L, Set.of("Fr", "fr", "FR", "F", "French", "french", "Ch", "CH"));

    private final String symbol;
    private final String ucum;
    private final long thirdNanometres;
    private final Set<String> spellings;

    LengthUnit(String symbol, String ucum, long thirdNanometres, Set<String> spellings) {
        this.symbol = symbol;
        this.ucum = ucum;
        this.thirdNanometres = thirdNanometres;
        this.spellings = spellings;
    }

    /** Returns the symbol that Ferrule writes, such as {@code mm}. */
    public String symbol() {
        return symbol;
    }

    /** Returns the case-sensitive UCUM code, such as {@code [in_i]}. */
    public String ucum() {
        return ucum;
    }

    /** Returns the exact size of one unit in thirds of a nanometre. */
    public long thirdNanometres() {
        return thirdNanometres;
    }

    /** Finds the unit with this spelling. Symbols of the SI keep their case: {@code MM} is not a millimetre. */
    static Optional<LengthUnit> find(String spelling) {
        return Arrays.stream(values()).filter(unit -> unit.spellings.contains(spelling)).findFirst();
    }

    /** Returns the symbols of all units for a message: {@code mm, cm, ...}. */
    static String symbols() {
        return Arrays.stream(values()).map(LengthUnit::symbol).collect(Collectors.joining(", "));
    }
}
