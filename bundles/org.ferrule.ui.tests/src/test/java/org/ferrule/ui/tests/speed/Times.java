/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Gathers how long something took, each time: on the clock, and how long the calling thread has worked, which depends
 * less on what else the machine does.
 */
final class Times {

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final List<Double> clock = new ArrayList<>();
    private final List<Double> work = new ArrayList<>();
    private long start;
    private long workStart;

    void take(Runnable action) {
        begin();
        action.run();
        end();
    }

    void begin() {
        start = System.nanoTime();
        workStart = threads.getCurrentThreadCpuTime();
    }

    void end() {
        clock.add((System.nanoTime() - start) / 1e6);
        work.add((threads.getCurrentThreadCpuTime() - workStart) / 1e6);
    }

    private static double at(List<Double> values, double share) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    String words() {
        return String.format(Locale.ROOT, "%.1f ms, of it the display's thread worked %.1f ms", at(clock, 0.5),
                at(work, 0.5))
                + (clock.size() == 1 ? "" : String.format(Locale.ROOT,
                        " (medians of %d; 95 %% within %.1f and %.1f ms)", clock.size(), at(clock, 0.95),
                        at(work, 0.95)));
    }
}
