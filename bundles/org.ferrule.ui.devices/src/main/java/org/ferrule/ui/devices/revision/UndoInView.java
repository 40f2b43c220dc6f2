/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.DocumentEditor;

/** Lets undo and redo, from within the view, work on the document that it compares. */
final class UndoInView {

    private UndoInView() {
    }

    static void install(IActionBars bars, Supplier<Optional<DocumentEditor>> editor) {
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), action(editor, session -> {
            if (session.nextUndo() != null) {
                session.undo();
            }
        }));
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), action(editor, session -> {
            if (session.nextRedo() != null) {
                session.redo();
            }
        }));
        bars.updateActionBars();
    }

    private static Action action(Supplier<Optional<DocumentEditor>> editor, Consumer<DocumentSession> body) {
        return new Action() {
            @Override
            public void run() {
                editor.get().map(DocumentEditor::session).ifPresent(body);
            }
        };
    }
}
