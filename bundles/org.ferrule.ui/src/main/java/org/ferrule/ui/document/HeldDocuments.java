/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.ferrule.model.Document;
import org.ferrule.ui.Services;

/**
 * The documents that another document refers to, as the sessions that their own editors share: what is edited there is
 * seen here at once. They are held until this is closed. To be used on the display's thread only.
 */
public final class HeldDocuments implements AutoCloseable {

    private final DocumentSessions sessions = Services.get(DocumentSessions.class);
    private final Map<IFile, DocumentSession> held = new HashMap<>();
    private final SessionListener follower = new Follower();
    private final IFile from;
    private final Consumer<DocumentChange> changed;

    /**
     * Creates documents.
     *
     * @param from the file from which references lead to them
     * @param changed hears what has changed in one of them, once for a command
     */
    public HeldDocuments(IFile from, Consumer<DocumentChange> changed) {
        this.from = from;
        this.changed = changed;
    }

    /** Returns the document at a relative path; nothing when there is none of that type, or it is broken. */
    public <D extends Document> Optional<D> find(String path, Class<D> type) {
        return DocumentFiles.resolve(from, path).filter(IFile::exists).flatMap(this::session)
                .flatMap(DocumentSession::document).filter(type::isInstance).map(type::cast);
    }

    /** Returns the session of a file, which is held from now on. */
    public Optional<DocumentSession> session(IFile file) {
        DocumentSession known = held.get(file);
        return known != null ? Optional.of(known) : acquire(file);
    }

    private Optional<DocumentSession> acquire(IFile file) {
        try {
            DocumentSession session = sessions.acquire(file);
            session.addListener(follower);
            held.put(file, session);
            return Optional.of(session);
        } catch (CoreException e) {
            ILog.of(HeldDocuments.class).log(e.getStatus());
            return Optional.empty();
        }
    }

    /** Tells whether the file is there, but was missing when it was looked for, or the other way round. */
    public boolean cameOrWent(IFile file) {
        return file.exists() != held.containsKey(file);
    }

    @Override
    public void close() {
        List.copyOf(held.values()).forEach(session -> {
            session.removeListener(follower);
            sessions.release(session);
        });
        held.clear();
    }

    private final class Follower implements SessionListener {

        @Override
        public void documentChanged(DocumentChange change) {
            changed.accept(change);
        }
    }
}
