/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.recovery;

import java.io.IOException;
import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.emf.common.command.Command;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.ide.IDE;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.io.json.ReadResult;
import org.ferrule.model.Document;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.internal.document.SafeSave;

/** Opens a document with edits that were not saved, as one change that can be undone and is not saved. */
final class EditsRestorer {

    private final IWorkbenchPage page;

    EditsRestorer(IWorkbenchPage page) {
        this.page = page;
    }

    /** Returns the file that the edits belong to; it need not exist. */
    static IFile file(UnsavedEdits edits) {
        return ResourcesPlugin.getWorkspace().getRoot().getFile(edits.path());
    }

    /**
     * Restores the edits; a file that is gone is written again, a project that is closed is
     * opened.
     *
     * @throws CoreException if that is not possible; nothing has changed then
     */
    void restore(UnsavedEdits edits) throws CoreException {
        IFile file = file(edits);
        Document document = read(edits);
        file.getProject().open(null);
        if (!file.exists()) {
            new SafeSave(AtomicFiles::write).save(file, Optional.empty(), edits.content(), null);
        }
        IEditorPart part = IDE.openEditor(page, file);
        if (!(part instanceof DocumentEditor editor) || !editor.session().editable()) {
            throw new CoreException(Status.error(file.getFullPath() + " cannot be edited as it is on disk"));
        }
        take(editor.session(), document);
    }

    private static Document read(UnsavedEdits edits) throws CoreException {
        ReadResult read = new JsonDocuments().read(edits.content(), edits.path().lastSegment());
        return read.document().orElseThrow(() -> new CoreException(
                Status.error("The edits of " + edits.path() + " were kept, but are no document", new IOException(
                        read.problems().toString()))));
    }

    private static void take(DocumentSession session, Document wanted) {
        Command command = new ContentCommand(session.domain(), session.document().orElseThrow()).taking(wanted,
                "Restoring of unsaved edits");
        if (command.canExecute()) {
            session.execute(command);
        }
    }
}
