/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.swt.graphics.Color;
import org.ferrule.ui.look.Colours;

/** The colours of the table beside paper and text. They follow the theme, so they are asked for at each painting. */
final class GridColours {

    private static final int GRID_SHARE = 14;
    private static final int HEAD_SHARE = 7;
    private static final int GROUP_SHARE = 11;
    private static final int SELECTED_SHARE = 28;

    private GridColours() {
    }

    static Color selected() {
        return Colours.tinted(Colours.selection(), SELECTED_SHARE);
    }

    static Color grid() {
        return Colours.tinted(Colours.text(), GRID_SHARE);
    }

    static Color head() {
        return Colours.tinted(Colours.text(), HEAD_SHARE);
    }

    static Color group() {
        return Colours.tinted(Colours.text(), GROUP_SHARE);
    }
}
