/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.CoreException;
import org.ferrule.engine.plan.CaseClosing.StoredDocument;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.FileReferences;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.escalation.live.LivePlan;

/** The documents that a case rests on, as they are stored, and what keeps the case from being closed. */
final class ClosingDocuments {

    private final Map<String, StoredDocument> stored = new LinkedHashMap<>();
    private final List<String> refusals = new ArrayList<>();

    /** Reads the documents of a case. On the display's thread only. */
    ClosingDocuments(LivePlan live) {
        Optional<CaseDocument> file = live.file();
        if (file.isEmpty() || !live.session().editable()) {
            refusals.add("The case cannot be edited.");
            return;
        }
        if (file.get().getClosing() != null) {
            refusals.add("The case was closed on " + file.get().getClosing().getClosed() + ".");
            return;
        }
        if (live.shown().isEmpty()) {
            refusals.add("The case is not planned: " + String.join(" ", live.problems()));
            return;
        }
        if (live.stale()) {
            refusals.add("The case is being planned anew; wait until that is done.");
        }
        if (file.get().getLog().isEmpty()) {
            refusals.add("Nothing is in the log: there is nothing to close.");
        }
        live.shown().get().plan().progress().problems()
                .forEach(problem -> refusals.add(live.shown().get().words().status().problem(problem) + "."));
        FileReferences.of(file.get()).forEach(path -> read(live, path));
    }

    private void read(LivePlan live, String path) {
        Optional<DocumentSession> session = live.documents().session(path);
        if (session.flatMap(DocumentSession::document).isEmpty()) {
            refusals.add("\u201c" + path + "\u201d is not there, or cannot be opened.");
        } else if (session.get().dirty()) {
            refusals.add("\u201c" + path + "\u201d has changes that are not saved. Save it first: its fingerprint is "
                    + "that of the file.");
        } else {
            store(path, session.get());
        }
    }

    private void store(String path, DocumentSession session) {
        try {
            stored.put(path, new StoredDocument(session.document().orElseThrow(),
                    session.file().readAllBytes()));
        } catch (CoreException e) {
            refusals.add("\u201c" + path + "\u201d cannot be read: " + e.getMessage());
        }
    }

    /** Returns the documents by the paths that the case names. */
    Map<String, StoredDocument> stored() {
        return Map.copyOf(stored);
    }

    /** Returns, in sentences, why the case cannot be closed; none where it can. */
    List<String> refusals() {
        return List.copyOf(refusals);
    }
}
