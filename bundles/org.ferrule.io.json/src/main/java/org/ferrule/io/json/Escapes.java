/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

/** Finds places inside JSON strings, where an escape stands for one unit. */
final class Escapes {

    private static final int UNICODE_LENGTH = 6;

    private Escapes() {
    }

    /**
     * Returns the offset in the text of one unit of a string's value.
     *
     * @param start the offset of the opening quote
     * @param end the offset behind the closing quote
     * @param index the index in the value; its length gives the offset of the closing quote
     */
    static int offset(String text, int start, int end, int index) {
        int offset = start + 1;
        for (int i = 0; i < index && offset < end - 1; i++) {
            offset += width(text, offset);
        }
        return offset;
    }

    private static int width(String text, int offset) {
        if (text.charAt(offset) != '\\') {
            return 1;
        }
        return text.charAt(offset + 1) == 'u' ? UNICODE_LENGTH : 2;
    }
}
