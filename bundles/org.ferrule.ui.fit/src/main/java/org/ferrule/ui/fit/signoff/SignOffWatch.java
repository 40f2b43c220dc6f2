/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.chart.SolvedChart;
import org.ferrule.engine.signoff.SignOffComparison;
import org.ferrule.engine.signoff.SignOffState;
import org.ferrule.engine.signoff.SignedVerdicts;
import org.ferrule.model.FileReferences;
import org.ferrule.model.FitChart;
import org.ferrule.ui.fit.chart.SessionDocuments;

/**
 * Compares the answers of a chart with its sign-off whenever there are new ones, in the background. To be used on the
 * display's thread.
 */
public final class SignOffWatch implements AutoCloseable {

    /** What is to be compared: free of model objects. */
    private record Task(SignedVerdicts signed, SolvedChart solved, List<String> saved) {
    }

    private final AtomicReference<Task> wanted = new AtomicReference<>();
    private final Display display = Display.getCurrent();
    private final SessionDocuments documents;
    private final StoredHashes hashes;
    private final Runnable changed;
    private final Job job = new Comparing();
    private Optional<SignOffState> state = Optional.empty();
    private boolean closed;

    /**
     * Creates a watch.
     *
     * @param changed is run when the chart stands otherwise to its sign-off than before
     */
    public SignOffWatch(IFile chart, SessionDocuments documents, Runnable changed) {
        this.documents = documents;
        this.hashes = new StoredHashes(chart);
        this.changed = changed;
    }

    /** Returns how the chart stood to its sign-off when it was last compared; nothing where it has none. */
    public Optional<SignOffState> state() {
        return state;
    }

    /** Returns how the chart stands to its sign-off with the answers of now, for those who cannot wait. */
    public Optional<SignOffState> now() {
        Task task = wanted.get();
        return task == null ? state : Optional.of(compare(task));
    }

    /** What cannot be read counts as changed. */
    private SignOffState compare(Task task) {
        Map<String, String> now = Map.of();
        try {
            now = hashes.of(task.saved());
        } catch (CoreException e) {
            ILog.of(SignOffWatch.class).log(e.getStatus());
        }
        return new SignOffComparison(task.signed(), task.solved(), now).compare();
    }

    /** There are new answers. */
    public void answered(FitChart chart, SolvedChart solved) {
        Optional<SignedVerdicts> signed = SignedVerdicts.of(chart);
        if (signed.isEmpty()) {
            wanted.set(null);
            become(Optional.empty());
        } else {
            List<String> saved = FileReferences.of(chart).stream().filter(path -> !documents.unsaved(path)).toList();
            wanted.set(new Task(signed.get(), solved, saved));
            job.schedule();
        }
    }

    private void become(Optional<SignOffState> next) {
        if (!closed && !next.equals(state)) {
            state = next;
            changed.run();
        }
    }

    @Override
    public void close() {
        closed = true;
        wanted.set(null);
    }

    private final class Comparing extends Job {

        Comparing() {
            super("Compare a chart with its sign-off");
            setSystem(true);
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Task task = wanted.get();
            if (task == null) {
                return Status.OK_STATUS;
            }
            SignOffState compared = compare(task);
            if (!display.isDisposed()) {
                display.asyncExec(() -> publish(task, compared));
            }
            return Status.OK_STATUS;
        }

        private void publish(Task task, SignOffState compared) {
            if (wanted.compareAndSet(task, null)) {
                become(Optional.of(compared));
            }
        }
    }
}
