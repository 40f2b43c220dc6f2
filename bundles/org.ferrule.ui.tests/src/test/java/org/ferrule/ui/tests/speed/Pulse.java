/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.atomic.AtomicLong;

import org.eclipse.swt.widgets.Display;

/**
 * Asks the display again and again, from another thread, for a sign of life; tells the longest wait for one, and the most
 * that the display's thread has worked between two, which depends less on what else the machine does.
 */
final class Pulse implements AutoCloseable {
    private static final long BETWEEN_MS = 5;

    private final Display display;
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final AtomicLong longestNs = new AtomicLong();
    private final AtomicLong mostWorkNs = new AtomicLong();
    private final Thread thread = new Thread(this::ask, "Pulse");
    private volatile boolean ended;
    private long workedNs;

    /** Begins to ask, on the display's thread. */
    Pulse(Display display) {
        this.display = display;
        workedNs = threads.getCurrentThreadCpuTime();
        thread.setDaemon(true);
        thread.start();
    }

    private void ask() {
        try {
            while (!ended) {
                long asked = System.nanoTime();
                display.syncExec(() -> answered(asked));
                Thread.sleep(BETWEEN_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void answered(long asked) {
        longestNs.accumulateAndGet(System.nanoTime() - asked, Math::max);
        long now = threads.getCurrentThreadCpuTime();
        mostWorkNs.accumulateAndGet(now - workedNs, Math::max);
        workedNs = now;
    }

    /** Returns the longest wait so far, and the most work. */
    String words() {
        return longestNs.get() / 1_000_000 + " ms, with at most " + mostWorkNs.get() / 1_000_000
                + " ms of work of the display's thread between two answers";
    }

    @Override
    public void close() {
        ended = true;
    }
}
