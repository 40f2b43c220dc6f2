/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Codes of the HIBC supplier labelling standard: primary, secondary, and both in one. Lower-case letters are read as
 * capitals, as the alphabet has no others and the check character still guards them.
 */
final class HibcReader {
    private static final int LABELLER = 4;
    private static final int LONGEST_PRODUCT = 18;
    private static final int MOST_BLANKS = 2;

    private HibcReader() {
    }

    /** Reads a text that starts with a plus, or with the asterisk that is printed before it. */
    static ProductCode read(CodeText given, LocalDate today) throws CodeException {
        CodeText bare = withoutAsterisks(given);
        if (!bare.startsWith("+", 0)) {
            throw bare.fault(CodeFault.CHARACTER, 0, "a plus");
        }
        CodeText text = checked(capitals(bare));
        int end = text.length() - 1;
        CodeParts parts = new CodeParts();
        HibcSecondary secondary = new HibcSecondary(text, parts, new CodeDates(today));
        if (text.at(1) >= 'A' && text.at(1) <= 'Z') {
            int slash = Math.min(text.indexOf('/', 1), end);
            parts.di.set(primary(text, slash), text, 1);
            if (slash == end) {
                parts.link.set(text.at(end), text, end);
            } else {
                secondary.readAll(slash + 1, end);
            }
        } else {
            if (end < 3) {
                throw text.fault(CodeFault.LENGTH, text.length(), "a link character and a check character");
            }
            parts.link.set(text.at(end - 1), text, end - 1);
            secondary.readAll(1, end - 1);
        }
        return parts.code(Scheme.HIBC);
    }

    private static CodeText withoutAsterisks(CodeText text) throws CodeException {
        if (text.at(0) != '*') {
            return text;
        }
        if (text.length() < 2 || text.at(text.length() - 1) != '*') {
            throw text.fault(CodeFault.CHARACTER, text.length(), "an asterisk, as at the start");
        }
        return text.between(1, text.length() - 1);
    }

    /** A blank as check character is printed as a low line, which the alphabet has not. */
    private static CodeText capitals(CodeText text) throws CodeException {
        StringBuilder read = new StringBuilder(text.toString().replaceFirst("_$", " "));
        for (int i = 0; i < read.length(); i++) {
            char c = read.charAt(i);
            read.setCharAt(i, c >= 'a' && c <= 'z' ? Character.toUpperCase(c) : c);
            if (Mod43.ALPHABET.indexOf(read.charAt(i)) < 0) {
                throw text.fault(CodeFault.CHARACTER, i, "a letter, digit or one of -. $/+%");
            }
        }
        return text.with(read.toString());
    }

    /**
     * Returns the text up to its check character. Blanks behind it belong to the code if that makes it agree: the check
     * character can be one, and so can the link character before it.
     */
    private static CodeText checked(CodeText text) throws CodeException {
        if (text.length() < 3) {
            throw text.fault(CodeFault.LENGTH, text.length(), "data and a check character behind the plus");
        }
        List<CodeText> right = IntStream.rangeClosed(0, Math.min(MOST_BLANKS, text.blanksBehind()))
                .mapToObj(text::withBlanks).filter(code -> Mod43.endsWithCheck(code.toString())).toList();
        if (right.size() > 1) {
            throw text.fault(CodeFault.AMBIGUOUS, text.length(),
                    "no blank, or a low line in its place if it is the check character");
        }
        if (right.isEmpty()) {
            int last = text.length() - 1;
            throw text.fault(CodeFault.CHECK, last,
                    "check character \"" + Mod43.checkCharacter(text.part(0, last)) + "\"");
        }
        return right.get(0);
    }

    /** Labeller, product and unit of measure: four characters, one to eighteen, and a digit. */
    private static String primary(CodeText text, int end) throws CodeException {
        for (int i = 1; i < end; i++) {
            if (!Character.isLetterOrDigit(text.at(i))) {
                throw text.fault(CodeFault.CHARACTER, i, "a letter or digit of the device identifier");
            }
        }
        int product = end - 2 - LABELLER;
        if (product < 1 || product > LONGEST_PRODUCT) {
            throw text.fault(CodeFault.LENGTH, end, "a device identifier of 6 to 23 characters");
        }
        Digits.check(text, end - 1, end);
        return text.part(1, end);
    }
}
