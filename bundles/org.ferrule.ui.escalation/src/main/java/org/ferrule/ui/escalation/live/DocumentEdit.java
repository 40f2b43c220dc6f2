/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.live;

import java.util.function.Consumer;

import org.eclipse.emf.edit.command.ChangeCommand;
import org.ferrule.model.Document;

/** Whatever changes a document as a whole, as one command: one step back takes all of it out again. */
public final class DocumentEdit<D extends Document> extends ChangeCommand {

    private final D document;
    private final Consumer<D> change;

    /**
     * Creates a command.
     *
     * @param label names it in the menu
     * @param change changes the document directly
     */
    public DocumentEdit(D document, String label, Consumer<D> change) {
        super(document);
        this.document = document;
        this.change = change;
        setLabel(label);
    }

    @Override
    protected void doExecute() {
        change.accept(document);
    }
}
