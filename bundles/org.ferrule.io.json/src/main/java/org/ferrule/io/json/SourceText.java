/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.Arrays;
import java.util.stream.IntStream;

/** A text with the offsets where its lines begin; a line ends with LF, CR LF or CR. */
final class SourceText {

    private final String text;
    private final int[] lineStarts;

    SourceText(String text) {
        this.text = text;
        this.lineStarts = IntStream.concat(IntStream.of(0),
                IntStream.range(0, text.length()).filter(this::endsLine).map(i -> i + 1)).toArray();
    }

    private boolean endsLine(int offset) {
        return text.charAt(offset) == '\n' || text.charAt(offset) == '\r' && !text.startsWith("\n", offset + 1);
    }

    String text() {
        return text;
    }

    String text(JsonNode node) {
        return text.substring(node.start(), node.end());
    }

    /** Returns the offset behind the string of which the quote stands at an offset: the next quote that is not escaped. */
    static int endOfString(String text, int start) {
        int i = start + 1;
        while (text.charAt(i) != '"') {
            i += text.charAt(i) == '\\' ? 2 : 1;
        }
        return i + 1;
    }

    /** Returns the region from one offset to the next. */
    TextRegion region(int start, int end) {
        int found = Arrays.binarySearch(lineStarts, start);
        int line = found < 0 ? -found - 2 : found;
        return new TextRegion(line + 1, start - lineStarts[line] + 1, start, end - start);
    }

    TextRegion region(JsonNode node) {
        return region(node.start(), node.end());
    }
}
