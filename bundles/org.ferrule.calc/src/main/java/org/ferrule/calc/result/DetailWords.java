/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.calc.result;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The name of a detail as people read it: words, and the unit that the name ends with.
 *
 * @param words in lower-case letters, with blanks between them
 * @param unit with a blank before it, or empty
 */
record DetailWords(String words, String unit) {

    /** The longer ones first, since some end with others. */
    private static final Map<String, String> UNITS = units();
    private static final Map<String, String> SHORT = Map.of("rss", "root sum square", "sd", "standard deviation",
            "positions", "positions, in mm");

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("MlPerMin", "mL/min");
        units.put("MgPerDl", "mg/dL");
        units.put("NPerMm", "N/mm");
        units.put("Nmm2", "N mm\u00b2");
        units.put("MPa", "MPa");
        units.put("Atm", "atm");
        units.put("Deg", "degrees");
        units.put("Mm", "mm");
        units.put("Cm", "cm");
        units.put("Ml", "mL");
        units.put("Kg", "kg");
        units.put("N", "N");
        return units;
    }

    /** Returns the words and the unit of a name such as {@code rssLowMm}. */
    static DetailWords of(String name) {
        return UNITS.entrySet().stream().filter(unit -> ends(name, unit.getKey())).findFirst()
                .map(unit -> new DetailWords(split(name.substring(0, name.length() - unit.getKey().length())),
                        " " + unit.getValue()))
                .orElseGet(() -> new DetailWords(split(name), ""));
    }

    private static boolean ends(String name, String unit) {
        return name.length() > unit.length() && name.endsWith(unit);
    }

    private static String split(String name) {
        return Stream.of(name.split("(?=[A-Z])")).map(word -> word.toLowerCase(Locale.ROOT))
                .map(word -> SHORT.getOrDefault(word, word)).collect(Collectors.joining(" "));
    }
}
