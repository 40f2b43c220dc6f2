/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Widget;

/** Finds what is painted over and over while nobody does anything. */
public final class Repaints {

    private static final int WATCHED_MS = 500;
    /** A caret blinks once in this time; what is laid out in a circle is painted some thirty times. */
    private static final int MANY = 10;
    /** Scroll bars of GTK fade for two seconds after they were used. */
    private static final int TURNS = 10;

    private Repaints() {
    }

    /** Returns what is still painted many times after five seconds; nothing as soon as there is none. */
    public static List<String> whileIdle(Robot robot) {
        robot.waitForJobs();
        robot.settle();
        List<String> found = inOneTurn(robot);
        for (int turn = 1; turn < TURNS && !found.isEmpty(); turn++) {
            found = inOneTurn(robot);
        }
        return found;
    }

    private static List<String> inOneTurn(Robot robot) {
        Map<Widget, Integer> counts = new LinkedHashMap<>();
        Listener counter = event -> counts.merge(event.widget, 1, Integer::sum);
        Display display = Display.getCurrent();
        display.addFilter(SWT.Paint, counter);
        try {
            robot.pause(WATCHED_MS);
        } finally {
            display.removeFilter(SWT.Paint, counter);
        }
        return counts.entrySet().stream().filter(count -> count.getValue() > MANY)
                .map(count -> count.getKey() + " " + count.getValue() + " times").toList();
    }
}
