/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.swt.widgets.Display;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;

/** Undo, redo and revert of one session after the other. */
public final class SessionActions implements SessionListener {

    private final Action undo = new SessionAction("org.eclipse.ui.edit.undo", () -> session().undo());
    private final Action redo = new SessionAction("org.eclipse.ui.edit.redo", () -> session().redo());
    private final Action revert = new SessionAction("org.eclipse.ui.file.revert", this::revertSession);
    private DocumentSession session;

    /** Returns the action that undoes the last command. */
    public IAction undo() {
        return undo;
    }

    /** Returns the action that redoes what was undone last. */
    public IAction redo() {
        return redo;
    }

    /** Returns the action that gives up all changes. */
    public IAction revert() {
        return revert;
    }

    /** Works on the session from now on; on none if it is null. */
    public void follow(DocumentSession next) {
        if (session != null) {
            session.removeListener(this);
        }
        session = next;
        if (session != null) {
            session.addListener(this);
        }
        stateChanged();
    }

    private DocumentSession session() {
        return session;
    }

    @Override
    public void stateChanged() {
        update(undo, "&Undo", session == null ? null : session.nextUndo());
        update(redo, "&Redo", session == null ? null : session.nextRedo());
        revert.setEnabled(session != null && session.dirty());
    }

    private static void update(Action action, String verb, Command command) {
        action.setEnabled(command != null);
        action.setText(command == null ? verb : verb + " " + command.getLabel());
    }

    private void revertSession() {
        try {
            session.revert();
        } catch (CoreException e) {
            ErrorDialog.openError(Display.getCurrent().getActiveShell(), "Revert", "The file cannot be read again.",
                    e.getStatus());
        }
    }

    private static final class SessionAction extends Action {

        private final Runnable body;

        SessionAction(String command, Runnable body) {
            this.body = body;
            setActionDefinitionId(command);
        }

        @Override
        public void run() {
            body.run();
        }
    }
}
