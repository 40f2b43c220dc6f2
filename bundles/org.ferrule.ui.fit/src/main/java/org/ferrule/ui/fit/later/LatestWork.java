/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.later;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/**
 * Works in the background for one control. A newer wish replaces an older one, whose result is thrown away; so is that
 * of a control which is gone. To be used on the display's thread.
 */
public final class LatestWork {

    private final AtomicReference<Task<?>> wanted = new AtomicReference<>();
    private final Control control;
    private final Job job;

    /** A piece of work, and who waits for it. */
    private record Task<T>(Supplier<T> work, Consumer<T> shown) {

        Runnable done() {
            T result = work.get();
            return () -> shown.accept(result);
        }
    }

    /**
     * Works for a control.
     *
     * @param name what is done, for those who watch jobs
     */
    public LatestWork(Control control, String name) {
        this.control = control;
        this.job = new Work(name);
    }

    /**
     * Does the work soon.
     *
     * @param shown gets the result, on the display's thread
     */
    public <T> void start(Supplier<T> work, Consumer<T> shown) {
        wanted.set(new Task<>(work, shown));
        job.schedule();
    }

    /** Nobody waits for anything any more. */
    public void forget() {
        wanted.set(null);
    }

    private final class Work extends Job {

        Work(String name) {
            super(name);
            setSystem(true);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Task<?> task = wanted.get();
            if (task == null || control.isDisposed()) {
                return Status.OK_STATUS;
            }
            Runnable done = task.done();
            if (!control.isDisposed()) {
                control.getDisplay().asyncExec(() -> {
                    if (!control.isDisposed() && wanted.compareAndSet(task, null)) {
                        done.run();
                    }
                });
            }
            return Status.OK_STATUS;
        }
    }
}
