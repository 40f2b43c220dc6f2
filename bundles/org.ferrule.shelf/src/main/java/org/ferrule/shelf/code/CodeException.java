/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.code;

/** A text is no code that can be read. */
public class CodeException extends Exception {
    private static final long serialVersionUID = 1L;

    private final CodeFault fault;
    private final String text;
    private final int position;
    private final String expected;

    /**
     * Takes what is wrong.
     *
     * @param fault kind of fault
     * @param text the text as it was given
     * @param position index in the text, from 0 to its length
     * @param expected what was expected there, in English
     */
    public CodeException(CodeFault fault, String text, int position, String expected) {
        super("\"" + printable(text) + "\", character " + (position + 1) + ": expected " + expected);
        this.fault = fault;
        this.text = text;
        this.position = position;
        this.expected = expected;
    }

    /** Returns the kind of fault. */
    public CodeFault fault() {
        return fault;
    }

    /** Returns the text as it was given. */
    public String text() {
        return text;
    }

    /** Returns the index in the text at which something else was expected. */
    public int position() {
        return position;
    }

    /** Returns what was expected, in English. */
    public String expected() {
        return expected;
    }

    /** Control characters as the pictures that Unicode has for them. */
    private static String printable(String text) {
        StringBuilder printable = new StringBuilder(text);
        for (int i = 0; i < printable.length(); i++) {
            if (printable.charAt(i) < ' ') {
                printable.setCharAt(i, (char) ('\u2400' + printable.charAt(i)));
            }
        }
        return printable.toString();
    }
}
