/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.GC;

/** Fits names into the room that they have, in the font of the graphics. */
final class HeadText {

    private static final String ELLIPSIS = "\u2026";

    private HeadText() {
    }

    static String shorten(GC gc, String text, int width) {
        if (gc.textExtent(text).x <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && gc.textExtent(text.substring(0, end) + ELLIPSIS).x > width) {
            end--;
        }
        return text.substring(0, end) + ELLIPSIS;
    }

    /** Breaks at spaces; the last line that is allowed is shortened. */
    static List<String> wrap(GC gc, String text, int width, int most) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        while (!rest.isEmpty() && lines.size() < most - 1) {
            String line = first(gc, rest, width);
            lines.add(shorten(gc, line, width));
            rest = rest.substring(line.length()).stripLeading();
        }
        if (!rest.isEmpty()) {
            lines.add(shorten(gc, rest, width));
        }
        return lines;
    }

    private static String first(GC gc, String text, int width) {
        int end = text.length();
        while (gc.textExtent(text.substring(0, end)).x > width && text.lastIndexOf(' ', end - 1) > 0) {
            end = text.lastIndexOf(' ', end - 1);
        }
        return text.substring(0, end);
    }
}
