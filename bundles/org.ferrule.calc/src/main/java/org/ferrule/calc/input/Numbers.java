/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.input;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads numbers, whatever the locale. */
final class Numbers {
    private static final Pattern NUMBER = Pattern
            .compile("([+-]?(?:[0-9]+(?:\\.[0-9]+)?|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?)(.*)");
    private static final int MOST_CHARACTERS = 30;
    private static final int MOST_DIGITS_OF_COUNT = 9;

    /** A number with what stands behind it. */
    record Tail(BigDecimal number, String rest) {
    }

    private Numbers() {
    }

    static Tail split(String text) {
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches() || text.length() > MOST_CHARACTERS) {
            throw new IllegalArgumentException("must be a number with a decimal point");
        }
        if (matcher.group(2).startsWith(",")) {
            throw new IllegalArgumentException("must have a decimal point, because a comma could mean two things");
        }
        return new Tail(new BigDecimal(matcher.group(1)), matcher.group(2).strip());
    }

    static BigDecimal decimal(String text, String unit) {
        Tail tail = split(text);
        if (!tail.rest().isEmpty() && !tail.rest().equals(unit)) {
            throw new IllegalArgumentException(
                    unit.isEmpty() ? "must be a number without a unit" : "must be in " + unit);
        }
        return tail.number();
    }

    static int whole(String text) {
        String digits = text.strip();
        if (!digits.matches("[0-9]{1," + MOST_DIGITS_OF_COUNT + "}")) {
            throw new IllegalArgumentException("must be a whole number");
        }
        return Integer.parseInt(digits);
    }

    static BigDecimal share(String text) {
        Tail tail = split(text);
        return switch (tail.rest()) {
            case "" -> tail.number();
            case "%" -> tail.number().movePointLeft(2);
            default -> throw new IllegalArgumentException("must be a share such as 0.95 or 95 %");
        };
    }
}
