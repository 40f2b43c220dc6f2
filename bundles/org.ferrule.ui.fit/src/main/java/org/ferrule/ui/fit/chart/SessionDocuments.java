/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.ferrule.engine.live.ChartDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.RuleSet;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.DocumentSessions;
import org.ferrule.ui.document.SessionListener;

/**
 * The documents that a chart refers to, in the sessions of their own editors: so every edit counts at once, saved or
 * not. To be used on the display's thread only.
 */
public final class SessionDocuments implements ChartDocuments, AutoCloseable {

    private final DocumentSessions sessions = Services.get(DocumentSessions.class);
    private final Map<IFile, DocumentSession> held = new HashMap<>();
    private final SessionListener follower = new Follower();
    private final IFile chart;
    private final Runnable replaced;

    /**
     * Creates documents.
     *
     * @param from the file from which references lead to them
     * @param replaced is run when one of them was replaced by another
     */
    public SessionDocuments(IFile from, Runnable replaced) {
        this.chart = from;
        this.replaced = replaced;
    }

    @Override
    public Optional<DeviceLibrary> library(String path) {
        return document(path, DeviceLibrary.class);
    }

    @Override
    public Optional<RuleSet> rules(String path) {
        return document(path, RuleSet.class);
    }

    private <D extends Document> Optional<D> document(String path, Class<D> type) {
        return DocumentFiles.resolve(chart, path).filter(IFile::exists).flatMap(this::session)
                .flatMap(DocumentSession::document).filter(type::isInstance).map(type::cast);
    }

    private Optional<DocumentSession> session(IFile file) {
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
            ILog.of(SessionDocuments.class).log(e.getStatus());
            return Optional.empty();
        }
    }

    /** Returns whether the file is there, but no session of it is held: it was missing before. */
    boolean appeared(IFile file) {
        return file.exists() && !held.containsKey(file);
    }

    /** Returns whether the session of the file is held, but the file is gone. */
    boolean vanished(IFile file) {
        return !file.exists() && held.containsKey(file);
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
            if (change.reloaded()) {
                replaced.run();
            }
        }
    }
}
