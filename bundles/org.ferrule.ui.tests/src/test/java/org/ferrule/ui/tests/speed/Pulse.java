/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import java.util.concurrent.atomic.AtomicLong;

import org.eclipse.swt.widgets.Display;

/** Asks the display again and again, from another thread, for a sign of life; tells the longest wait for one. */
final class Pulse implements AutoCloseable {
    private static final long BETWEEN_MS = 5;

    private final Display display;
    private final AtomicLong longestNs = new AtomicLong();
    private final Thread thread = new Thread(this::ask, "Pulse");
    private volatile boolean ended;

    Pulse(Display display) {
        this.display = display;
        thread.setDaemon(true);
        thread.start();
    }

    private void ask() {
        try {
            while (!ended) {
                long asked = System.nanoTime();
                display.syncExec(() -> longestNs.accumulateAndGet(System.nanoTime() - asked, Math::max));
                Thread.sleep(BETWEEN_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Returns the longest wait so far. */
    long longestMs() {
        return longestNs.get() / 1_000_000;
    }

    @Override
    public void close() {
        ended = true;
    }
}
