/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;

/** Draws a bar along the lower edge of what is pressed and stays so: in the dark, the toolkit's own sign is hardly seen. */
public final class Pressed {

    private static final int THICKNESS = 3;
    private static final int INSET = 5;

    private Pressed() {
    }

    /** Marks a toggle button whenever it is pressed. */
    public static void mark(Button toggle) {
        toggle.addPaintListener(event -> {
            if (toggle.getSelection()) {
                Point size = toggle.getSize();
                event.gc.setBackground(Colours.selection());
                event.gc.fillRectangle(INSET, size.y - THICKNESS - 1, Math.max(0, size.x - 2 * INSET), THICKNESS);
            }
        });
    }
}
