/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.json;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A text with the offsets where its lines begin; a line ends with LF, CR LF or CR. */
final class SourceText {

    private final String text;
    private final List<Integer> lineStarts = new ArrayList<>();

    SourceText(String text) {
        this.text = text;
        lineStarts.add(0);
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n' || text.charAt(i) == '\r' && !text.startsWith("\n", i + 1)) {
                lineStarts.add(i + 1);
            }
        }
    }

    String text() {
        return text;
    }

    String text(JsonNode node) {
        return text.substring(node.start(), node.end());
    }

    /** Returns the region from one offset to the next. */
    TextRegion region(int start, int end) {
        int found = Collections.binarySearch(lineStarts, start);
        int line = found < 0 ? -found - 2 : found;
        return new TextRegion(line + 1, start - lineStarts.get(line) + 1, start, end - start);
    }

    TextRegion region(JsonNode node) {
        return region(node.start(), node.end());
    }
}
