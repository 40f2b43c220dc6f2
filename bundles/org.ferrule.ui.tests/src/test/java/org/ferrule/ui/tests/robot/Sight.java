/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** Brings a place of a control into the part of a page that is seen, as one who wants to click there scrolls. */
final class Sight {

    private Sight() {
    }

    /** Scrolls what holds the control, from the innermost outwards, until the place is in sight; else nothing moves. */
    static void bring(Control control, Point place) {
        for (Composite holder = control.getParent(); holder != null; holder = holder.getParent()) {
            if (holder instanceof ScrolledComposite scrolled) {
                scroll(scrolled, within(scrolled, control, place));
            }
        }
    }

    /** Whether the place is in sight of all that scrolls it. */
    static boolean holds(Control control, Point place) {
        for (Composite holder = control.getParent(); holder != null; holder = holder.getParent()) {
            if (holder instanceof ScrolledComposite scrolled
                    && !scrolled.getClientArea().contains(within(scrolled, control, place))) {
                return false;
            }
        }
        return control.getDisplay().getBounds().contains(control.toDisplay(place));
    }

    private static Point within(ScrolledComposite scrolled, Control control, Point place) {
        return control.getDisplay().map(control, scrolled, place);
    }

    private static void scroll(ScrolledComposite scrolled, Point place) {
        Rectangle seen = scrolled.getClientArea();
        if (!seen.contains(place)) {
            Point origin = scrolled.getOrigin();
            scrolled.setOrigin(origin.x + over(place.x, seen.x, seen.width),
                    origin.y + over(place.y, seen.y, seen.height));
        }
    }

    /** How far a place has to come to stand in the middle of what is seen; 0 where it is in sight. */
    private static int over(int at, int start, int length) {
        return at >= start && at < start + length ? 0 : at - start - length / 2;
    }
}
