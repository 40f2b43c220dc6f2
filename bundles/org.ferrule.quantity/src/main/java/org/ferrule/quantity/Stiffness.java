/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A bending stiffness EI as printed, such as {@code 151 N mm2}. Units: N mm2, N cm2, N m2 and lbf in2 (1 lbf =
 * 4.4482216152605 N and 1 in = 25.4 mm, exactly).
 *
 * @param newtonMm2 in newtons times square millimetres, above zero
 * @param text as typed
 */
public record Stiffness(BigDecimal newtonMm2, String text) {
    private static final Pattern PRINTED = Pattern
            .compile("\\s*(\\d+(?:\\.\\d+)?)\\s*(N|lbf)\\s*[*\u00b7]?\\s*(mm|cm|m|in)\\s*(?:\\^?2|\u00b2)\\s*");
    private static final Map<String, BigDecimal> UNITS = Map.of("N mm", BigDecimal.ONE, "N cm", new BigDecimal("100"),
            "N m", new BigDecimal("1000000"), "lbf in",
            new BigDecimal("4.4482216152605").multiply(new BigDecimal("645.16")));

    public Stiffness {
        Objects.requireNonNull(text, "text");
        if (newtonMm2.signum() <= 0) {
            throw new IllegalArgumentException("a stiffness must be above zero, not " + newtonMm2 + " N mm2");
        }
    }

    /** Reads a stiffness; empty when the text is none, has a unit that is not known here, or is zero. */
    public static Optional<Stiffness> read(String text) {
        Matcher printed = PRINTED.matcher(text);
        if (!printed.matches()) {
            return Optional.empty();
        }
        BigDecimal number = new BigDecimal(printed.group(1));
        BigDecimal unit = UNITS.get(printed.group(2) + " " + printed.group(3));
        return unit == null || number.signum() == 0 ? Optional.empty()
                : Optional.of(new Stiffness(number.multiply(unit), text));
    }
}
