/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.form;

import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.StatedFact;
import org.ferrule.ui.document.DocumentSession;

/** States facts of a case, takes them back, and leaves them out; each by a command that can be undone. */
public final class FactEdits {

    private static final String NAME = "Statement of a fact";

    private final DocumentSession session;

    /** Creates edits of the case of a session. */
    public FactEdits(DocumentSession session) {
        this.session = session;
    }

    private Optional<CaseDocument> file() {
        return session.document().filter(CaseDocument.class::isInstance).map(CaseDocument.class::cast);
    }

    private Optional<StatedFact> find(String fact) {
        return file().flatMap(
                file -> file.getFacts().stream().filter(stated -> fact.equals(stated.getFact())).findFirst());
    }

    /** Returns what is stated about a fact; nothing when nobody says. */
    public Optional<Boolean> stated(String fact) {
        return find(fact).map(StatedFact::isHolds);
    }

    /** States that it holds, that it does not, or, with nothing, neither. */
    public void state(String fact, Optional<Boolean> holds) {
        Optional<StatedFact> known = find(fact);
        if (!session.editable() || known.map(StatedFact::isHolds).equals(holds)) {
            return;
        }
        if (holds.isEmpty()) {
            execute(RemoveCommand.create(session.domain(), known.orElseThrow()));
        } else if (known.isPresent()) {
            session.set(known.get(), Literals.STATED_FACT__HOLDS, holds.get());
        } else {
            StatedFact added = ModelFactory.eINSTANCE.createStatedFact();
            added.setFact(fact);
            added.setHolds(holds.get());
            execute(AddCommand.create(session.domain(), file().orElseThrow(), Literals.CASE_DOCUMENT__FACTS, added));
        }
    }

    private void execute(Command command) {
        session.execute(new CommandWrapper(NAME, "", command));
    }
}
