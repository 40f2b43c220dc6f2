/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.regex.Pattern;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;

/** The parser's complaint, put for people who edit documents: where the bad token begins, without parser settings. */
final class SyntaxError {

    /** Advice to whoever programs the parser, and character codes. */
    private static final Pattern FOR_PROGRAMMERS = Pattern.compile(
            ": enable `[^`]*` to allow|\\s*\\(not recognized as one since [^)]*\\)|(?<=') \\(code \\d+\\)"
                    + "|\\s+at \\[Source.*",
            Pattern.DOTALL);

    private final JsonProcessingException error;
    private final String text;

    SyntaxError(JsonProcessingException error, String text) {
        this.error = error;
        this.text = text;
    }

    String message() {
        return FOR_PROGRAMMERS.matcher(error.getOriginalMessage()).replaceAll("");
    }

    /** The parser may have read the bad word or number already, or a part of it. */
    int offset() {
        JsonLocation place = error.getLocation();
        int offset = place == null ? 0 : (int) Math.min(Math.max(0, place.getCharOffset()), text.length());
        if (offset > 0 && error.getOriginalMessage().contains(" token '") && isInWord(offset - 1)) {
            offset--;
        }
        while (offset > 0 && offset < text.length() && isInWord(offset) && isInWord(offset - 1)) {
            offset--;
        }
        return offset;
    }

    private boolean isInWord(int index) {
        char c = text.charAt(index);
        return Character.isLetterOrDigit(c) || c == '.' || c == '+' || c == '-';
    }
}
