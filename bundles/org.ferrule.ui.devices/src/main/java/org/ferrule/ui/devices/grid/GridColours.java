/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** The colours of the table, mixed from the system's, so that they follow light and dark. */
final class GridColours {

    private static final int GRID_SHARE = 14;
    private static final int HEAD_SHARE = 7;
    private static final int GROUP_SHARE = 11;
    private static final int SELECTED_SHARE = 28;

    private GridColours() {
    }

    static Color text() {
        return system(SWT.COLOR_LIST_FOREGROUND);
    }

    static Color paper() {
        return system(SWT.COLOR_LIST_BACKGROUND);
    }

    static Color selected() {
        return mixed(SWT.COLOR_LIST_SELECTION, SELECTED_SHARE);
    }

    static Color anchor() {
        return system(SWT.COLOR_LIST_SELECTION);
    }

    static Color grid() {
        return mixed(SWT.COLOR_LIST_FOREGROUND, GRID_SHARE);
    }

    static Color head() {
        return mixed(SWT.COLOR_LIST_FOREGROUND, HEAD_SHARE);
    }

    static Color group() {
        return mixed(SWT.COLOR_LIST_FOREGROUND, GROUP_SHARE);
    }

    private static Color system(int id) {
        return Display.getCurrent().getSystemColor(id);
    }

    /** The paper with a share of another colour, in percent. */
    private static Color mixed(int id, int share) {
        RGB paper = paper().getRGB();
        RGB other = system(id).getRGB();
        return new Color(mix(paper.red, other.red, share), mix(paper.green, other.green, share),
                mix(paper.blue, other.blue, share));
    }

    private static int mix(int paper, int other, int share) {
        return (paper * (100 - share) + other * share) / 100;
    }
}
