/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.regex.Pattern;

/** Makes text from documents fit to be drawn: pictures refuse control characters. */
public final class Printable {
    private static final Pattern BLANKS = Pattern.compile("[\\p{Cc}\\p{Zl}\\p{Zp}]+");
    private static final Pattern NO_LOOK = Pattern.compile("[\\p{Cs}\\uFFFE\\uFFFF]");

    private Printable() {
    }

    /** The text on one line; what has no look becomes a blank or a replacement sign, so that nothing vanishes. */
    public static String line(String text) {
        return NO_LOOK.matcher(BLANKS.matcher(text).replaceAll(" ")).replaceAll("\uFFFD");
    }
}
