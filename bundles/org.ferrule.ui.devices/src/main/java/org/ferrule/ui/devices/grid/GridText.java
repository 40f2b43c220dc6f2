/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** Writes texts into cells, shortened to the room that they have. Measured texts are remembered: scrolling is quick. */
final class GridText {

    private static final String ELLIPSIS = "\u2026";
    private static final int MOST = 20_000;

    private record Measured(Font font, String text, int width) {
    }

    private final Map<Measured, String> known = new HashMap<>();

    static Font font() {
        return JFaceResources.getDefaultFont();
    }

    static Font italic() {
        return JFaceResources.getFontRegistry().getItalic(JFaceResources.DEFAULT_FONT);
    }

    static Font bold() {
        return JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
    }

    /** Draws in the font of the graphics, in the middle of the height. */
    void draw(GC gc, Rectangle area, String text) {
        if (area.width <= 0 || text.isEmpty()) {
            return;
        }
        int height = gc.getFontMetrics().getHeight();
        gc.drawText(shortened(gc, text, area.width), area.x, area.y + (area.height - height) / 2,
                SWT.DRAW_TRANSPARENT);
    }

    private String shortened(GC gc, String text, int width) {
        if (known.size() > MOST) {
            known.clear();
        }
        return known.computeIfAbsent(new Measured(gc.getFont(), text, width), key -> shorten(gc, text, width));
    }

    private static String shorten(GC gc, String text, int width) {
        String line = text.replaceAll("[\\r\\n\\t]+", " ");
        if (gc.textExtent(line).x <= width) {
            return line;
        }
        int low = 0;
        int high = line.length();
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (gc.textExtent(line.substring(0, middle) + ELLIPSIS).x <= width) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return line.substring(0, low) + ELLIPSIS;
    }
}
