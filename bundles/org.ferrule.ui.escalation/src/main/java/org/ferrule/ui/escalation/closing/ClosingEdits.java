/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import java.util.function.Consumer;

import org.ferrule.engine.plan.CountTaking;
import org.ferrule.engine.plan.UnitTaking;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Document;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.escalation.live.DocumentEdit;
import org.ferrule.ui.escalation.live.LivePlan;

/** Closes a case: one command for each document that changes, so that each can be undone where it is open. */
final class ClosingEdits {

    private final LivePlan live;
    private final ClosingReview review;

    ClosingEdits(LivePlan live, ClosingReview review) {
        this.live = live;
        this.review = review;
    }

    /** Adds the tries to the counts of the techniques. */
    void count() {
        CaseDocument file = live.file().orElseThrow();
        edit(file.getTechniques(), "Tries of a case counted",
                document -> CountTaking.take((TechniqueLibrary) document, review.counts()));
    }

    /** Takes the units off the shelf. */
    void take() {
        CaseDocument file = live.file().orElseThrow();
        var log = live.shown().orElseThrow().assembled().file().log();
        edit(file.getShelf(), "Units of a case taken", document -> UnitTaking.take((ShelfDocument) document, log));
    }

    private void edit(String path, String label, Consumer<Document> change) {
        DocumentSession session = live.documents().session(path).orElseThrow();
        session.execute(new DocumentEdit<>(session.document().orElseThrow(), label, change));
    }

    /** Writes the record into the case. */
    void close() {
        DocumentSession session = live.session();
        session.set(live.file().orElseThrow(), Literals.CASE_DOCUMENT__CLOSING, review.closing());
    }
}
