/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

import java.util.Arrays;

/** A code as it was given, without what a scanner or a keyboard adds; knows where in the given text a character stood. */
final class CodeText {
    static final char SEPARATOR = '\u001d';

    /** What scanners that cannot type control characters send in place of the group separator. */
    private static final String[] SUBSTITUTES = { "^]", "<GS>", "{GS}", "[GS]", "\u241d", "\\x1D", "<FNC1>",
        "{FNC1}" };

    private final String given;
    private final String text;
    private final int[] places;

    private CodeText(String given, String text, int[] places) {
        this.given = given;
        this.text = text;
        this.places = places;
    }

    /** Leaves out blanks, line ends and transmission characters at both ends; a group separator stays. */
    static CodeText of(String given) {
        int start = 0;
        int end = given.length();
        while (start < end && isPadding(given.charAt(start))) {
            start++;
        }
        while (end > start && isPadding(given.charAt(end - 1))) {
            end--;
        }
        int[] places = new int[end - start + 1];
        for (int i = 0; i < places.length; i++) {
            places[i] = start + i;
        }
        return new CodeText(given, given.substring(start, end), places);
    }

    private static boolean isPadding(char c) {
        return c <= ' ' && c != SEPARATOR || c == '\ufeff' || c == '\u00a0';
    }

    /** Returns how many blanks follow: they may belong to the code, as a blank can be a check character. */
    int blanksBehind() {
        int end = places[text.length()];
        int blanks = 0;
        while (end + blanks < given.length() && given.charAt(end + blanks) == ' ') {
            blanks++;
        }
        return blanks;
    }

    /** Returns the text with some of the blanks that follow. */
    CodeText withBlanks(int blanks) {
        int[] more = Arrays.copyOf(places, places.length + blanks);
        for (int i = places.length; i < more.length; i++) {
            more[i] = more[i - 1] + 1;
        }
        return new CodeText(given, text + " ".repeat(blanks), more);
    }

    int length() {
        return text.length();
    }

    char at(int index) {
        return text.charAt(index);
    }

    String part(int from, int to) {
        return text.substring(from, to);
    }

    boolean startsWith(String start, int from) {
        return text.startsWith(start, from);
    }

    int indexOf(char c, int from) {
        int found = text.indexOf(c, from);
        return found < 0 ? text.length() : found;
    }

    /** Returns what stands between two places. */
    CodeText between(int from, int to) {
        return new CodeText(given, text.substring(from, to), Arrays.copyOfRange(places, from, to + 1));
    }

    /** Returns the text with other characters, as many as before, in the same places. */
    CodeText with(String replacement) {
        return new CodeText(given, replacement, places);
    }

    /** Returns the text with a group separator wherever a substitute for it stands. */
    CodeText withSeparators() {
        StringBuilder replaced = new StringBuilder();
        int[] kept = new int[places.length];
        int at = 0;
        while (at < text.length()) {
            String substitute = substituteAt(at);
            kept[replaced.length()] = places[at];
            replaced.append(substitute.isEmpty() ? text.charAt(at) : SEPARATOR);
            at += Math.max(1, substitute.length());
        }
        kept[replaced.length()] = places[at];
        return new CodeText(given, replaced.toString(), Arrays.copyOf(kept, replaced.length() + 1));
    }

    private String substituteAt(int at) {
        for (String substitute : SUBSTITUTES) {
            if (text.regionMatches(true, at, substitute, 0, substitute.length())) {
                return substitute;
            }
        }
        return "";
    }

    /** Returns the exception for what is wrong at a place. */
    CodeException fault(CodeFault fault, int at, String expected) {
        return new CodeException(fault, given, places[at], expected);
    }

    @Override
    public String toString() {
        return text;
    }
}
