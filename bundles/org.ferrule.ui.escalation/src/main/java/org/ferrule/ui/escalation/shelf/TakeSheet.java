/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.shelf;

import org.eclipse.emf.edit.command.ChangeCommand;
import org.ferrule.engine.plan.ShelfSheets;
import org.ferrule.model.ShelfDocument;
import org.ferrule.shelf.stock.Shelf;

/** Takes a sheet over into a shelf; one step back takes all of it out again. */
final class TakeSheet extends ChangeCommand {

    private final ShelfDocument document;
    private final Shelf sheet;
    private final boolean removing;

    TakeSheet(ShelfDocument document, Shelf sheet, boolean removing) {
        super(document);
        this.document = document;
        this.sheet = sheet;
        this.removing = removing;
        setLabel("Import of a sheet");
    }

    @Override
    protected void doExecute() {
        ShelfSheets.take(document, sheet, removing);
    }
}
