/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.problem.ProblemBoard;

/**
 * Looks for problems while a document is being edited: shortly after the last of several edits it hands the document, as
 * the bytes that saving would write, to a job, which reads and checks it off the display's thread.
 */
public final class LiveChecks {

    /** How long to wait for another edit, in milliseconds; longer for a document that takes long to hand over. */
    private static final int PAUSE_MS = 200;
    private static final int PAUSE_PER_WORK = 5;

    private final DocumentRecords records;
    private final DocumentSessions sessions;
    private final ProblemBoard board;
    private final ProblemUpdate update;
    private final Map<DocumentSession, Follower> followers = new HashMap<>();
    private final Map<IFile, Job> checks = new HashMap<>();

    /** Creates the checks. */
    public LiveChecks(DocumentRecords records, DocumentSessions sessions, ProblemBoard board, ProblemUpdate update) {
        this.records = records;
        this.sessions = sessions;
        this.board = board;
        this.update = update;
    }

    /** Follows every session from now on. */
    public void connect() {
        sessions.onOpenAndClose(this::opened, this::closed);
        board.addListener(this::problemsFound);
    }

    private void opened(DocumentSession session) {
        Follower follower = new Follower(session);
        followers.put(session, follower);
        session.addListener(follower);
        if (board.of(session.file()).isEmpty()) {
            check(session.file(), () -> {
            });
        }
    }

    /** The unsaved state is gone with the session. */
    private void closed(DocumentSession session) {
        followers.remove(session).stop();
        check(session.file(), () -> records.dropLive(session.file()));
    }

    private void problemsFound(IFile file) {
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay()
                    .asyncExec(() -> sessions.find(file).ifPresent(DocumentSession::problemsFound));
        }
    }

    /** A later check of a file takes the place of an earlier one, which may take longer than the pause between edits. */
    private void check(IFile file, Runnable before) {
        Job earlier = checks.get(file);
        if (earlier != null) {
            earlier.cancel();
        }
        Job job = Job.createSystem("Checking " + file.getName(), (ICoreRunnable) monitor -> {
            before.run();
            updateIfThere(file, monitor);
        });
        job.setRule(new OneAtATime(file));
        checks.put(file, job);
        job.schedule();
    }

    private void updateIfThere(IFile file, IProgressMonitor monitor) throws CoreException {
        if (file.isAccessible()) {
            update.update(Set.of(file), monitor);
        }
    }

    private final class Follower implements SessionListener {

        private final DocumentSession session;
        private final Display display = Display.getCurrent();
        private final Runnable pauseOver = this::handOver;
        private boolean stopped;
        private int pause = PAUSE_MS;

        Follower(DocumentSession session) {
            this.session = session;
        }

        @Override
        public void documentChanged(DocumentChange change) {
            display.timerExec(pause, pauseOver);
        }

        @Override
        public void stateChanged() {
            if (!session.dirty()) {
                display.timerExec(pause, pauseOver);
            }
        }

        private void handOver() {
            if (stopped) {
                return;
            }
            if (session.dirty() && session.editable()) {
                long start = System.nanoTime();
                byte[] content = session.toBytes();
                pause = (int) Math.max(PAUSE_MS, PAUSE_PER_WORK * (System.nanoTime() - start) / 1_000_000);
                check(session.file(), () -> records.putLive(session.file(), content));
            } else {
                check(session.file(), () -> records.dropLive(session.file()));
            }
        }

        void stop() {
            stopped = true;
            display.timerExec(-1, pauseOver);
        }
    }
}
