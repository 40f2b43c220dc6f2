/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The code of a problem of one cell: it says which, so that the cell can be shown.
 *
 * @param topic what is wrong, as one word
 * @param outerKey the key of the row
 * @param innerKey the key of the column
 */
public record PairCode(String topic, String outerKey, String innerKey) {

    private static final Pattern FORM = Pattern.compile("pair\\.(\\w+) (.+) < (.+)");

    /** Checks that nothing is missing. */
    public PairCode {
        Objects.requireNonNull(topic, "topic");
        Objects.requireNonNull(outerKey, "outerKey");
        Objects.requireNonNull(innerKey, "innerKey");
    }

    /** Returns the code as a problem has it. */
    public String text() {
        return "pair." + topic + " " + outerKey + " < " + innerKey;
    }

    /** Returns the cell that the code of a problem names, if it names one. */
    public static Optional<PairCode> parse(String code) {
        Matcher matcher = FORM.matcher(code);
        return matcher.matches() ? Optional.of(new PairCode(matcher.group(1), matcher.group(2), matcher.group(3)))
                : Optional.empty();
    }
}
