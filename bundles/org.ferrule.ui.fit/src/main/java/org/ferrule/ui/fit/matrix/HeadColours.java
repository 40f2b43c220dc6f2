/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.swt.graphics.Color;
import org.ferrule.ui.look.Colours;

/** The colours around the cells. They follow the theme, so they are asked for at each painting. */
final class HeadColours {

    private static final int DETAIL_SHARE = 65;
    private static final int GRID_SHARE = 18;
    private static final int GROUND_SHARE = 6;
    private static final int SELECTED_SHARE = 30;

    private HeadColours() {
    }

    static Color text() {
        return Colours.text();
    }

    /** For what only accompanies. */
    static Color detail() {
        return Colours.tinted(Colours.text(), DETAIL_SHARE);
    }

    static Color paper() {
        return Colours.paper();
    }

    static Color grid() {
        return Colours.tinted(Colours.text(), GRID_SHARE);
    }

    static Color ground(boolean selected) {
        return selected ? Colours.tinted(Colours.selection(), SELECTED_SHARE)
                : Colours.tinted(Colours.text(), GROUND_SHARE);
    }
}
