/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity;

import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Repairs of how the numbers of a dimension are written. */
final class TextRepairs {
    private static final int THOUSANDS = 3;
    private static final Pattern COMMA = Pattern.compile("(\\d+),(\\d+)");
    private static final Pattern RANGE = Pattern
            .compile("(\\D*)([\\d.]*\\d)(\\s*[^\\d\\s.]*\\s*)\\.\\.(\\s*)(\\d[\\d.]*)(.*)", Pattern.DOTALL);

    private TextRepairs() {
    }

    /** Writes decimal commas as points; nothing if one of them may separate thousands, as in {@code 1,234}. */
    static Optional<String> decimalPoint(String text) {
        boolean found = COMMA.matcher(text).find();
        boolean doubtful = COMMA.matcher(text).results().anyMatch(TextRepairs::mayBeThousands);
        return found && !doubtful ? Optional.of(COMMA.matcher(text).replaceAll("$1.$2")) : Optional.empty();
    }

    private static boolean mayBeThousands(MatchResult number) {
        return number.group(2).length() == THOUSANDS && !number.group(1).matches("0+");
    }

    /** Exchanges the numbers of a range that has one unit. */
    static Optional<String> rangeOrder(String text) {
        Matcher range = RANGE.matcher(text);
        boolean oneUnit = range.matches() && (range.group(3).isBlank()
                || range.group(6).strip().startsWith(range.group(3).strip()));
        return oneUnit ? Optional.of(range.group(1) + range.group(5) + range.group(3) + ".." + range.group(4)
                + range.group(2) + range.group(6)) : Optional.empty();
    }
}
