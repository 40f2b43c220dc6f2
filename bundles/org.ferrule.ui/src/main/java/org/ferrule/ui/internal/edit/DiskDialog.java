/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.ferrule.ui.document.DocumentSession;

/** Asks whose state of a document counts, after another program has changed or deleted its file. */
final class DiskDialog {

    private static final int MINE = 0;
    private static final int THEIRS = 1;
    private static final int COMPARE = 2;

    private final DocumentSession session;
    private final Shell shell;

    DiskDialog(DocumentSession session, Shell shell) {
        this.session = session;
        this.shell = shell;
    }

    /** Asks until there is an answer, and takes theirs if that is wanted. Returns whether the user's own state counts. */
    boolean keepsMine() {
        int answer = COMPARE;
        while (answer == COMPARE) {
            answer = ask();
            if (answer == COMPARE) {
                new DiskCompare(session).open();
            }
        }
        if (answer == THEIRS) {
            takeTheirs();
        }
        return answer == MINE;
    }

    private int ask() {
        boolean there = session.file().exists();
        String question = there ? "Another program has changed this file while it has unsaved changes here."
                : "Another program has deleted this file while it has unsaved changes here.";
        String[] answers = there ? new String[] { "Keep Mine", "Take Theirs", "Compare" }
                : new String[] { "Keep Mine", "Cancel" };
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, session.file().getName(),
                question + "\nLocal history keeps what is replaced.", SWT.NONE, answers);
        return there || answer == MINE ? answer : -1;
    }

    private void takeTheirs() {
        try {
            session.revert();
        } catch (CoreException e) {
            ErrorDialog.openError(shell, session.file().getName(), "The file cannot be read.", e.getStatus());
        }
    }
}
