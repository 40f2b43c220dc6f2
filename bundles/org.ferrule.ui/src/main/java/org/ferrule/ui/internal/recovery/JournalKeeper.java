/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.internal.document.SnapshotListener;

/**
 * Writes unsaved edits into the journal, off the display's thread, and takes them out when they are saved or given up.
 * One job does it all, in order; of several states of a document only the last one is written.
 */
public final class JournalKeeper implements SnapshotListener {

    /** What the journal should hold of a document; no content if nothing. */
    private record Wanted(String base, byte[] content) {
        private static final Wanted NOTHING = new Wanted("", null);
    }

    private final Map<IFile, Wanted> wanted = new ConcurrentHashMap<>();
    private final UnsavedJournal journal;
    private final Job job = Job.createSystem("Keeping unsaved edits", (ICoreRunnable) monitor -> work());

    /** Creates a keeper of a journal. */
    public JournalKeeper(UnsavedJournal journal) {
        this.journal = journal;
    }

    @Override
    public void unsaved(DocumentSession session, byte[] content) {
        want(session.file(), new Wanted(session.base(), content));
    }

    @Override
    public void clean(DocumentSession session) {
        want(session.file(), Wanted.NOTHING);
    }

    /** At the end of the program no job runs any more, and this must not be lost. */
    @Override
    public void closed(DocumentSession session) {
        wanted.put(session.file(), Wanted.NOTHING);
        try {
            work();
        } catch (CoreException e) {
            job.schedule();
        }
    }

    private void want(IFile file, Wanted state) {
        wanted.put(file, state);
        job.schedule();
    }

    private synchronized void work() throws CoreException {
        for (IFile file : wanted.keySet()) {
            Wanted state = wanted.remove(file);
            if (state != null) {
                record(file, state);
            }
        }
    }

    private void record(IFile file, Wanted state) throws CoreException {
        try {
            if (state.content == null) {
                journal.drop(file.getFullPath());
            } else {
                journal.keep(new UnsavedEdits(file.getFullPath(), Instant.now(), state.base, state.content));
            }
        } catch (IOException e) {
            throw new CoreException(Status.error("The unsaved edits of " + file.getFullPath() + " cannot be kept", e));
        }
    }
}
