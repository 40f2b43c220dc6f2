/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import java.util.Map;

import org.eclipse.swt.graphics.Color;
import org.ferrule.picture.Ink;
import org.ferrule.ui.look.Colours;

/** The colours of inks on the screen, which may be light or dark. */
final class ScreenInks {

    private static final Map<String, Integer> ON_DARK = Map.of(Ink.TEXT.role(), 0xE6E8EB, Ink.MUTED.role(), 0xA9AFB7,
            Ink.RULE.role(), 0x565C64, Ink.PAPER.role(), 0x202226, Ink.BAND.role(), 0x2A2D32);

    private ScreenInks() {
    }

    /** Returns the colour, which nobody needs to dispose of. */
    static Color color(Ink ink) {
        Ink shown = Colours.dark() && ON_DARK.containsKey(ink.role())
                ? Ink.of(ink.role(), ON_DARK.get(ink.role())) : ink;
        return new Color(shown.red(), shown.green(), shown.blue());
    }
}
