/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.picture;

import org.eclipse.swt.graphics.Color;
import org.ferrule.chart.look.DrawingInks;
import org.ferrule.chart.look.Scheme;
import org.ferrule.picture.Ink;
import org.ferrule.ui.look.Colours;

/** The colours of inks on the screen, which may be light or dark. */
final class ScreenInks {

    private ScreenInks() {
    }

    /** Returns the colour, which nobody needs to dispose of. */
    static Color color(Ink ink) {
        Ink shown = DrawingInks.in(Colours.dark() ? Scheme.DARK : Scheme.LIGHT, ink);
        return new Color(shown.red(), shown.green(), shown.blue());
    }
}
