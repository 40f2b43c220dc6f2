/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.edit.DocumentEditor;

/** Shows the verdicts that the unsaved edits of the active document change. */
public final class ShowEffect extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IEditorPart active = HandlerUtil.getActiveEditor(event);
        if (active instanceof DocumentEditor editor && editor.session().editable()) {
            editor.session().commitDrafts();
            try {
                EditEffect effect = EditEffect.of(editor.session());
                new EffectDialog(HandlerUtil.getActiveShell(event), effect, false).open();
            } catch (OperationCanceledException e) {
                return null; // the user no longer wants to know
            }
        }
        return null;
    }
}
