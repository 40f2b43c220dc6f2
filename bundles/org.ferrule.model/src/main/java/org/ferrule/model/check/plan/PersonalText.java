/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part of a text that could tell who somebody is.
 *
 * @param start where it begins
 * @param end where it ends, exclusive
 * @param what it looks like
 */
record PersonalText(int start, int end, String what) {

    private record Look(Pattern pattern, String what) {
    }

    private static final List<Look> LOOKS = List.of(
            look("\\b(?i:born|DOB|d\\.o\\.b\\.|(?:date of )?birth(?:date|day)?|MRN)\\b", "personal data"),
            look("\\b(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof)\\b\\.?\\s+\\p{Lu}\\p{L}+(?:[ -]\\p{Lu}\\p{L}+)*", "a name"),
            look("\\b(?i:patient|pt|name|surname)\\s*[:=]\\s*\\p{L}+(?:[ ,-]+\\p{Lu}\\p{L}+)*", "a name"),
            look("\\b\\d{1,2}([./-])\\d{1,2}\\1(?:\\d{4}|\\d{2})\\b", "a date"),
            look("\\b(?:19|20)\\d{2}([./-])\\d{1,2}\\1\\d{1,2}\\b", "a date"),
            look("\\b\\d{6,}\\b", "a number of a person or a file"),
            look("\\b\\d{2,4}(?:[ /-]\\d{2,4}){2,}\\b", "a number of a person or a file"));

    private static Look look(String pattern, String what) {
        return new Look(Pattern.compile(pattern, Pattern.UNICODE_CHARACTER_CLASS), what);
    }

    /** The first such part; nothing where there is none. */
    static Optional<PersonalText> find(String text) {
        for (Look look : LOOKS) {
            Matcher matcher = look.pattern().matcher(text);
            if (matcher.find()) {
                return Optional.of(new PersonalText(matcher.start(), matcher.end(), look.what()));
            }
        }
        return Optional.empty();
    }
}
