/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.build;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.internal.document.SessionSnapshots;
import org.ferrule.ui.internal.document.SnapshotListener;
import org.ferrule.ui.problem.ProblemBoard;

/**
 * Looks for problems while a document is being edited: hands what it says to a job, which reads and checks it off the
 * display's thread.
 */
public final class LiveChecks implements SnapshotListener {

    private final DocumentRecords records;
    private final DocumentSessions sessions;
    private final ProblemBoard board;
    private final ProblemUpdate update;
    private final Map<IFile, Job> checks = new HashMap<>();
    private final Set<IFile> openedEarly = new LinkedHashSet<>();
    private boolean begun;

    /** Creates the checks. */
    public LiveChecks(DocumentRecords records, DocumentSessions sessions, ProblemBoard board, ProblemUpdate update) {
        this.records = records;
        this.sessions = sessions;
        this.board = board;
        this.update = update;
    }

    /** Follows every document that is being edited from now on. */
    public void connect(SessionSnapshots snapshots) {
        snapshots.addListener(this);
        board.addListener(this::problemsFound);
    }

    @Override
    public void opened(DocumentSession session) {
        if (board.of(session.file()).isEmpty()) {
            checkSoon(session.file());
        }
    }

    @Override
    public void unsaved(DocumentSession session, byte[] content) {
        check(session.file(), () -> records.putLive(session.file(), content));
    }

    @Override
    public void clean(DocumentSession session) {
        check(session.file(), () -> records.dropLive(session.file()));
    }

    /** The unsaved state is gone with the session. */
    @Override
    public void closed(DocumentSession session) {
        check(session.file(), () -> records.dropLive(session.file()));
    }

    private void problemsFound(IFile file) {
        if (PlatformUI.isWorkbenchRunning()) {
            PlatformUI.getWorkbench().getDisplay()
                    .asyncExec(() -> sessions.find(file).ifPresent(DocumentSession::problemsFound));
        }
    }

    private void checkSoon(IFile file) {
        if (begun) {
            check(file, () -> {
            });
        } else {
            openedEarly.add(file);
        }
    }

    /** Checks what has been open since before the window was there, and from now on at once what is opened. */
    public void begin() {
        begun = true;
        openedEarly.forEach(file -> check(file, () -> {
        }, FirstCheck.UNTIL_SHOWN_MS));
        openedEarly.clear();
    }

    private void check(IFile file, Runnable before) {
        check(file, before, 0);
    }

    /** A later check of a file takes the place of an earlier one, which may take longer than the pause between edits. */
    private void check(IFile file, Runnable before, long pauseMs) {
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
        job.schedule(pauseMs);
    }

    private void updateIfThere(IFile file, IProgressMonitor monitor) throws CoreException {
        if (file.isAccessible()) {
            update.update(Set.of(file), monitor);
        }
    }
}
