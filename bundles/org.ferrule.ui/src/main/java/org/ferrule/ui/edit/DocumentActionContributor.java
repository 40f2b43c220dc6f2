/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorActionBarContributor;
import org.ferrule.ui.internal.edit.SessionActions;

/** Lets the Edit and File menus work on the active {@link DocumentEditor}: undo, redo and revert. */
public class DocumentActionContributor extends EditorActionBarContributor {

    private final SessionActions actions = new SessionActions();

    @Override
    public void init(IActionBars bars) {
        super.init(bars);
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), actions.undo());
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), actions.redo());
        bars.setGlobalActionHandler(ActionFactory.REVERT.getId(), actions.revert());
    }

    @Override
    public void setActiveEditor(IEditorPart editor) {
        actions.follow(editor instanceof DocumentEditor document ? document.session() : null);
        getActionBars().updateActionBars();
    }

    @Override
    public void dispose() {
        actions.follow(null);
        super.dispose();
    }
}
