/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.follow;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;

/** Lays tables below a plot, or beside it where there is little height. */
public final class TurningSash {

    private static final double BESIDE_ABOVE = 2.4;

    private TurningSash() {
    }

    /** Creates an empty one, which fills its parent. */
    public static SashForm in(Composite parent) {
        return in(parent, BESIDE_ABOVE);
    }

    /**
     * Creates an empty one, which fills its parent.
     *
     * @param besideAbove how many times as wide as high it is at least where its parts lie side by side
     */
    public static SashForm in(Composite parent, double besideAbove) {
        SashForm sash = new SashForm(parent, SWT.VERTICAL | SWT.SMOOTH);
        sash.addListener(SWT.Resize, event -> turn(sash, besideAbove));
        return sash;
    }

    private static void turn(SashForm sash, double besideAbove) {
        Point size = sash.getSize();
        int orientation = size.x > besideAbove * size.y ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (sash.getOrientation() != orientation) {
            sash.setOrientation(orientation);
        }
    }
}
