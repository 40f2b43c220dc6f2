/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.swt.widgets.Display;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.document.SessionListener;

/** Writes every document that is being edited to bytes, once for several edits, and hands them to all who want them. */
public final class SessionSnapshots {

    /** How long to wait for another edit, in milliseconds; longer for a document that takes long to hand over. */
    private static final int PAUSE_MS = 200;
    private static final int PAUSE_PER_WORK = 5;

    private final List<SnapshotListener> listeners = new CopyOnWriteArrayList<>();
    private final Map<DocumentSession, Follower> followers = new HashMap<>();

    /** Adds a listener. */
    public void addListener(SnapshotListener listener) {
        listeners.add(listener);
    }

    /** Follows every session from now on. */
    public void connect(DocumentSessions sessions) {
        sessions.onOpenAndClose(this::opened, this::closed);
    }

    private void opened(DocumentSession session) {
        Follower follower = new Follower(session);
        followers.put(session, follower);
        session.addListener(follower);
        listeners.forEach(listener -> listener.opened(session));
    }

    private void closed(DocumentSession session) {
        followers.remove(session).stop();
        listeners.forEach(listener -> listener.closed(session));
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
            if (session.dirty() && session.writable()) {
                long start = System.nanoTime();
                byte[] content = session.snapshot();
                pause = (int) Math.max(PAUSE_MS, PAUSE_PER_WORK * (System.nanoTime() - start) / 1_000_000);
                listeners.forEach(listener -> listener.unsaved(session, content));
            } else {
                listeners.forEach(listener -> listener.clean(session));
            }
        }

        void stop() {
            stopped = true;
            display.timerExec(-1, pauseOver);
        }
    }
}
