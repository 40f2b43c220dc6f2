/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is searched for, and by what it is replaced.
 *
 * @param text the text, or the pattern
 * @param replacement what takes its place; in a pattern {@code $1} stands for its first group
 * @param matchCase whether upper and lower case differ
 * @param wholeField whether it must fill its field
 * @param pattern whether the text is a regular expression
 */
public record Search(String text, String replacement, boolean matchCase, boolean wholeField, boolean pattern) {

    /**
     * Returns how fields are searched.
     *
     * @throws java.util.regex.PatternSyntaxException if the text is a pattern that cannot be read
     */
    Pattern compiled() {
        int caseFlags = matchCase ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
        return Pattern.compile(text, pattern ? caseFlags : caseFlags | Pattern.LITERAL);
    }

    boolean finds(Pattern compiled, String field) {
        Matcher matcher = compiled.matcher(field);
        return !text.isEmpty() && (wholeField ? matcher.matches() : matcher.find());
    }

    /** Returns the text of the field after replacing. */
    String replace(Pattern compiled, String field) {
        return compiled.matcher(field).replaceAll(pattern ? replacement : Matcher.quoteReplacement(replacement));
    }
}
