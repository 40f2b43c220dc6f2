/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Display;

/**
 * The documents that are being edited, one session for each file. Who acquires a session must release it; the last one
 * who does so ends it. To be used on the display's thread only.
 */
public final class DocumentSessions {

    private static final class Held {
        private final DocumentSession session;
        private int holders;

        Held(DocumentSession session) {
            this.session = session;
        }
    }

    private final Map<IFile, Held> held = new HashMap<>();
    private final List<Consumer<DocumentSession>> openListeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<DocumentSession>> closeListeners = new CopyOnWriteArrayList<>();

    /**
     * Returns the session of the file, opened if need be. An editor that depends on other documents, such as a chart on
     * its libraries, acquires their sessions too, and so sees what their own editors change at once.
     *
     * @throws CoreException if the file cannot be read; a broken document can
     */
    public DocumentSession acquire(IFile file) throws CoreException {
        return held.containsKey(file) ? hold(file) : acquire(FileReading.of(file));
    }

    /** Does the same with a file that was read; what was read does not count if there is a session already. */
    public DocumentSession acquire(FileReading reading) {
        if (!held.containsKey(reading.file())) {
            DocumentSession opened = new DocumentSession(reading, Display.getCurrent());
            held.put(reading.file(), new Held(opened));
            openListeners.forEach(listener -> listener.accept(opened));
        }
        return hold(reading.file());
    }

    private DocumentSession hold(IFile file) {
        Held found = held.get(file);
        found.holders++;
        return found.session;
    }

    /** Gives back a session that was acquired. */
    public void release(DocumentSession session) {
        Held found = held.get(session.file());
        if (found == null || found.session != session) {
            throw new IllegalArgumentException(session.file().getFullPath() + " was released already");
        }
        if (--found.holders == 0) {
            held.remove(session.file());
            closeListeners.forEach(listener -> listener.accept(session));
            session.dispose();
        }
    }

    /** Returns the session of a file that is being edited. */
    public Optional<DocumentSession> find(IFile file) {
        return Optional.ofNullable(held.get(file)).map(found -> found.session);
    }

    /** Adds what is to be done when a session opens, and when it ends. */
    public void onOpenAndClose(Consumer<DocumentSession> opened, Consumer<DocumentSession> closed) {
        openListeners.add(opened);
        closeListeners.add(closed);
    }

    /** Lets the session of the file look at what is on disk now, if the file is being edited. */
    public void fileChanged(IFile file) {
        find(file).ifPresent(DocumentSessions::lookAtDisk);
    }

    private static void lookAtDisk(DocumentSession session) {
        try {
            session.fileChanged();
        } catch (CoreException e) {
            ILog.of(DocumentSessions.class).log(e.getStatus());
        }
    }
}
