/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.problem;

import org.eclipse.core.runtime.IProgressMonitor;
import org.ferrule.fit.matrix.Progress;

/** Lets the work of the solver be cancelled by a monitor. */
record MonitorProgress(IProgressMonitor monitor) implements Progress {

    @Override
    public void worked(int done, int total) {
        monitor.subTask(done + " of " + total);
    }

    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }
}
