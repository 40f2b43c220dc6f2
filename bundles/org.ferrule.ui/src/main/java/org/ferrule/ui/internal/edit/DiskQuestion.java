/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.DocumentEditor;

/**
 * Notices, when an editor is activated, what other programs have done to its file, and asks once about each conflict,
 * when the user looks at the editor. The editor of a file that is gone closes if nothing would be lost.
 */
public final class DiskQuestion implements IPartListener2 {

    private final DocumentEditor editor;
    private boolean asking;

    /** Creates the question of an editor. */
    public DiskQuestion(DocumentEditor editor) {
        this.editor = editor;
        editor.getSite().getPage().addPartListener(this);
    }

    /** Stops looking. */
    public void dispose() {
        editor.getSite().getPage().removePartListener(this);
    }

    @Override
    public void partActivated(IWorkbenchPartReference reference) {
        if (reference.getPart(false) == editor) {
            lookAtDisk(editor.session().file());
            askWhenSeen();
        }
    }

    private static void lookAtDisk(IFile file) {
        WorkspaceJob job = new WorkspaceJob("Refreshing " + file.getName()) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
                file.refreshLocal(IResource.DEPTH_ZERO, monitor);
                return Status.OK_STATUS;
            }
        };
        job.setSystem(true);
        job.setRule(file.getWorkspace().getRuleFactory().refreshRule(file));
        job.schedule();
    }

    /** Asks now, if there is a question and the editor is active; otherwise when it is activated. */
    public void askWhenSeen() {
        DocumentSession session = editor.session();
        if (session == null || asking || editor.getSite().getPage().getActiveEditor() != editor) {
            return;
        }
        if (!session.file().exists() && !session.dirty()) {
            editor.getSite().getShell().getDisplay().asyncExec(() -> editor.close(false));
        } else if (session.conflict()) {
            asking = true;
            editor.getSite().getShell().getDisplay().asyncExec(this::ask);
        }
    }

    private void ask() {
        try {
            DocumentSession session = editor.session();
            if (session != null && session.conflict()
                    && new DiskDialog(session, editor.getSite().getShell()).keepsMine()) {
                session.keepMine();
            }
        } catch (CoreException e) {
            ILog.of(DiskQuestion.class).log(e.getStatus());
        } finally {
            asking = false;
        }
    }
}
