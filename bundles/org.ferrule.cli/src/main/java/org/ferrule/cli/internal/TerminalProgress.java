/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;

import org.ferrule.fit.matrix.Progress;

/** A line that tells how far work is, on terminals only; it appears when the work takes a while. */
public final class TerminalProgress implements Progress {
    private static final long QUIET_NANOS = 400_000_000L;
    private static final int WIDTH = 60;
    private final PrintWriter err;
    private final String what;
    private final boolean isTerminal = System.console() != null;
    private final long started = System.nanoTime();
    private boolean shown;

    /** Progress of some work, named for people. */
    public TerminalProgress(PrintWriter err, String what) {
        this.err = err;
        this.what = what;
    }

    @Override
    public void worked(int done, int total) {
        if (!isTerminal || System.nanoTime() - started < QUIET_NANOS && !shown) {
            return;
        }
        shown = true;
        err.print("\r" + what + ": " + done + " of " + total + (done == total ? "\r" + " ".repeat(WIDTH) + "\r" : ""));
        err.flush();
    }

    @Override
    public boolean isCancelled() {
        return false;
    }
}
