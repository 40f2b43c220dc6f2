/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Gathers how long something took, each time. */
final class Times {

    private final List<Double> milliseconds = new ArrayList<>();

    void take(Runnable work) {
        long start = System.nanoTime();
        work.run();
        add(System.nanoTime() - start);
    }

    void add(long nanoseconds) {
        milliseconds.add(nanoseconds / 1e6);
    }

    double median() {
        return at(0.5);
    }

    double at(double share) {
        List<Double> sorted = new ArrayList<>(milliseconds);
        Collections.sort(sorted);
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
    }

    String words() {
        return String.format(Locale.ROOT, "median %.1f ms, 95 %% within %.1f ms, worst %.1f ms of %d", median(),
                at(0.95),
                at(1), milliseconds.size());
    }
}
