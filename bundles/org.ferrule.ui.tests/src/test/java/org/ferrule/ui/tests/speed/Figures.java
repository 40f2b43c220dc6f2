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

/** Times in milliseconds, told as median and worst with what else the machine had to do. */
final class Figures {

    private final String what;
    private final List<Double> milliseconds = new ArrayList<>();

    Figures(String what) {
        this.what = what;
    }

    void add(double ms) {
        milliseconds.add(ms);
    }

    int count() {
        return milliseconds.size();
    }

    double median() {
        List<Double> sorted = new ArrayList<>(milliseconds);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    void print() {
        System.out.printf(Locale.ROOT, "%s: median %.1f ms, worst %.1f ms of %d (load %.1f on %d processors)%n", what,
                median(), Collections.max(milliseconds), milliseconds.size(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                Runtime.getRuntime().availableProcessors());
    }
}
