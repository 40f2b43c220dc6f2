/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Times in milliseconds, on the clock and of the processor, told as median and worst with what else the machine had to
 * do. On a busy machine only the processor's time says something about the program.
 */
final class Figures {

    private final String what;
    private final List<Double> clock = new ArrayList<>();
    private final List<Double> processor = new ArrayList<>();

    Figures(String what) {
        this.what = what;
    }

    void add(double clockMs, double processorMs) {
        clock.add(clockMs);
        processor.add(processorMs);
    }

    private static double median(List<Double> times) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    void print() {
        System.out.printf(Locale.ROOT,
                "speed: %s: median %.1f ms, worst %.1f ms; processor time median %.1f ms, worst %.1f ms; %d times "
                        + "(load %.1f on %d processors)%n",
                what, median(clock), Collections.max(clock), median(processor), Collections.max(processor),
                clock.size(), ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                Runtime.getRuntime().availableProcessors());
    }
}
