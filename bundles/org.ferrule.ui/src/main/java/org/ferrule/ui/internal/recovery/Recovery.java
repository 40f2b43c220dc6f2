/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.IOException;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.Services;
import org.ferrule.ui.internal.edit.DiskCompare;
import org.ferrule.ui.internal.recovery.UnsavedJournal.Left;

/** Offers what earlier runs of the program have left unsaved. */
public final class Recovery {

    private final UnsavedJournal journal = Services.get(UnsavedJournal.class);
    private final IWorkbenchWindow window;

    /** Creates a recovery that opens documents in a window. */
    public Recovery(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Shows what is left, if anything is; tells whether there was something. */
    public boolean offer() {
        List<Left> left = left();
        if (!left.isEmpty()) {
            new RecoveryDialog(window.getShell(), left, new Done()).open();
        }
        return !left.isEmpty();
    }

    /** Edits that the file holds by now need no decision. */
    private List<Left> left() {
        try {
            List<Left> left = journal.left();
            left.stream().filter(Recovery::isSaved).forEach(this::forget);
            return left.stream().filter(one -> !isSaved(one)).toList();
        } catch (IOException e) {
            report(Status.error("The journal of unsaved edits cannot be read", e));
            return List.of();
        }
    }

    private static boolean isSaved(Left left) {
        return RecoveryState.of(left.edits()) == RecoveryState.SAVED;
    }

    private void forget(Left left) {
        try {
            journal.drop(left);
        } catch (IOException e) {
            report(Status.error("The journal of unsaved edits cannot be written", e));
        }
    }

    private static void report(IStatus status) {
        StatusManager.getManager().handle(status, StatusManager.LOG);
    }

    /** What is restored goes over into the journal of this run before it leaves that of the earlier one. */
    private final class Done implements RecoveryDialog.Choices {

        @Override
        public boolean restore(Left left) {
            try {
                journal.keep(left.edits());
                return restored(left);
            } catch (IOException e) {
                return failed(Status.error("The journal of unsaved edits cannot be written", e));
            }
        }

        private boolean restored(Left left) throws IOException {
            try {
                new EditsRestorer(window.getActivePage()).restore(left.edits());
                forget(left);
                return true;
            } catch (CoreException e) {
                journal.drop(left.edits().path());
                return failed(e.getStatus());
            }
        }

        private boolean failed(IStatus status) {
            ErrorDialog.openError(shell(), "Restore", "The edits could not be restored. They are still kept.", status);
            return false;
        }

        @Override
        public void compare(Left left) {
            new DiskCompare(EditsRestorer.file(left.edits()), left.edits().content(), "Edits that were not saved")
                    .open();
        }

        @Override
        public boolean discard(List<Left> left) {
            boolean sure = MessageDialog.open(MessageDialog.QUESTION, shell(), "Discard",
                    "Discard what was not saved of " + names(left) + "? This cannot be undone.", SWT.SHEET, "Discard",
                    IDialogConstants.CANCEL_LABEL) == 0;
            if (sure) {
                left.forEach(Recovery.this::forget);
            }
            return sure;
        }

        private static String names(List<Left> left) {
            return left.size() == 1 ? left.get(0).edits().path().lastSegment() : left.size() + " documents";
        }

        private Shell shell() {
            return window.getShell();
        }
    }
}
