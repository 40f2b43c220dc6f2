/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.quantity;

/** A quantity that cannot be read, with the place and what would be right there. */
public class QuantitySyntaxException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String text;
    private final int position;
    private final String expected;

    /**
     * Creates the exception.
     *
     * @param text the whole text that was read
     * @param position the 0-based index in the text, 0 to its length
     * @param expected what was expected there, in words
     */
    public QuantitySyntaxException(String text, int position, String expected) {
        super("cannot read \"" + text + "\": expected " + expected + " at " + place(text, position));
        this.text = text;
        this.position = position;
        this.expected = expected;
    }

    /** Returns the whole text that was read. */
    public String text() {
        return text;
    }

    /** Returns the 0-based index at which the text went wrong, 0 to its length. */
    public int position() {
        return position;
    }

    /** Returns what was expected at the position, in words. */
    public String expected() {
        return expected;
    }

    private static String place(String text, int position) {
        return position >= text.length() ? "its end" : "\"" + text.substring(position) + "\"";
    }
}
