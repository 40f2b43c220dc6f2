/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;

/** How long a control takes to paint itself: from the first to the last listener of each of its paint events. */
final class PaintTimes {

    private final Times times = new Times();
    private int count;

    PaintTimes(Control control) {
        Display display = control.getDisplay();
        Listener begin = event -> {
            if (event.widget == control) {
                times.begin();
            }
        };
        display.addFilter(SWT.Paint, begin);
        control.addListener(SWT.Paint, event -> {
            times.end();
            count++;
        });
        control.addListener(SWT.Dispose, event -> display.removeFilter(SWT.Paint, begin));
    }

    int count() {
        return count;
    }

    String words() {
        return times.words();
    }
}
