/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.matrix;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;

/** The colours around the cells, from the system's, so that they follow light and dark. */
final class HeadColours {

    private static final int DETAIL_SHARE = 65;
    private static final int GRID_SHARE = 18;
    private static final int GROUND_SHARE = 6;
    private static final int SELECTED_SHARE = 30;

    private HeadColours() {
    }

    static Color text() {
        return system(SWT.COLOR_LIST_FOREGROUND);
    }

    /** For what only accompanies. */
    static Color detail() {
        return mixed(SWT.COLOR_LIST_FOREGROUND, DETAIL_SHARE);
    }

    static Color paper() {
        return system(SWT.COLOR_LIST_BACKGROUND);
    }

    static Color grid() {
        return mixed(SWT.COLOR_LIST_FOREGROUND, GRID_SHARE);
    }

    static Color ground(boolean selected) {
        return selected ? mixed(SWT.COLOR_LIST_SELECTION, SELECTED_SHARE)
                : mixed(SWT.COLOR_LIST_FOREGROUND, GROUND_SHARE);
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
