/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import org.eclipse.swt.graphics.Color;
import org.ferrule.ui.look.Colours;

/**
 * The colours of a ladder. On the dark theme all of them are subdued, so that the screen does not blind in a dim room.
 */
enum LadderInk {

    /** Behind everything. */
    GROUND(0xF3F5F6, 0x1B1D20),
    /** A step. */
    CARD(0xFFFFFF, 0x25282C),
    /** The edge of a step. */
    EDGE(0xD3D8DD, 0x3A3F45),
    /** What is to be read. */
    TEXT(0x16191C, 0xDDE0E3),
    /** What accompanies it. */
    MUTED(0x555C64, 0x9BA3AB),
    /** What is to be done next. */
    NEXT(0x12635F, 0x64BDB5),
    /** Lettering on that. */
    ON_NEXT(0xFFFFFF, 0x10211F),
    /** What must not be overlooked. */
    WARN(0x9A3412, 0xF0A07A),
    /** Behind what must not be overlooked. */
    WARN_GROUND(0xFBEDE6, 0x3A2A23),
    /** What is left of a budget. */
    LEFT(0x2F7F8C, 0x4E9FAB),
    /** What is used up of it. */
    USED(0xDDE2E6, 0x34393F);

    private final Color light;
    private final Color dark;

    LadderInk(int light, int dark) {
        this.light = color(light);
        this.dark = color(dark);
    }

    private static Color color(int rgb) {
        return new Color(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF);
    }

    /** Returns the colour in the theme as it is now; nobody needs to dispose of it. */
    Color color() {
        return Colours.dark() ? dark : light;
    }
}
