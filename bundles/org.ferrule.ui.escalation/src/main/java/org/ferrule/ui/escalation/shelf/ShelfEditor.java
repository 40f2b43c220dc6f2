/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import org.eclipse.ui.PartInitException;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.contents.ContentsPage;
import org.ferrule.ui.escalation.techniques.ElementLabels;

/** The editor of shelves: a table of what is there, and the document with its sources. */
public final class ShelfEditor extends DocumentEditor {

    private ShelfPage shelf;

    @Override
    protected void addDocumentPages() throws PartInitException {
        shelf = new ShelfPage(this);
        addPage(shelf);
        addPage(new ContentsPage(this, "contents", "All fields", new ElementLabels(session().adapters())));
    }

    /** Returns the page with the table. */
    public ShelfPage shelf() {
        return shelf;
    }

    @Override
    public void setFocus() {
        if (shelf != null && getActivePageInstance() == shelf) {
            shelf.setFocus();
        } else {
            super.setFocus();
        }
    }
}
