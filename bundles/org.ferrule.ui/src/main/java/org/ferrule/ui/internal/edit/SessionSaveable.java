/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.Saveable;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SaveConflictException;
import org.ferrule.ui.edit.DocumentEditor;

/**
 * What is saved: the session, not the editor. Two editors of a file are one thing to save, and closing one of them asks
 * nothing.
 */
public final class SessionSaveable extends Saveable {

    private final DocumentSession session;
    private final DocumentEditor editor;

    /** Creates the saveable of an editor. */
    public SessionSaveable(DocumentSession session, DocumentEditor editor) {
        this.session = session;
        this.editor = editor;
    }

    @Override
    public String getName() {
        return session.file().getName();
    }

    @Override
    public String getToolTipText() {
        return session.file().getFullPath().toString();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return PlatformUI.getWorkbench().getEditorRegistry().getImageDescriptor(getName());
    }

    @Override
    public void doSave(IProgressMonitor monitor) throws CoreException {
        SaveChecks.ask(session, editor.getSite().getShell());
        try {
            session.save(monitor);
        } catch (SaveConflictException e) {
            if (!new DiskDialog(session, editor.getSite().getShell()).keepsMine()) {
                throw new OperationCanceledException();
            }
            session.saveOver(monitor);
        }
    }

    /** Saves and shows why if that fails; the document is still dirty then. */
    public void saveAndShowFailure(IProgressMonitor monitor, Shell shell) {
        try {
            doSave(monitor);
        } catch (CoreException e) {
            monitor.setCanceled(true);
            ErrorDialog.openError(shell, "Save", "The document could not be saved. The file is as it was.",
                    e.getStatus());
        } catch (OperationCanceledException e) {
            monitor.setCanceled(true);
        }
    }

    @Override
    public boolean isDirty() {
        return session.dirty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SessionSaveable saveable && saveable.session == session;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(session);
    }
}
