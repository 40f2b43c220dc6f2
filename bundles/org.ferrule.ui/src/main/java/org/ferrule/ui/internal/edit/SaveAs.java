/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.util.Optional;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.dialogs.ErrorDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.dialogs.SaveAsDialog;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.internal.document.SafeSave;

/** Asks for a file and saves a copy of a document there. */
public final class SaveAs {

    private final DocumentSession session;
    private final Shell shell;

    /** Creates the question for a document. */
    public SaveAs(DocumentSession session, Shell shell) {
        this.session = session;
        this.shell = shell;
    }

    /** Returns the copy; nothing if there is none. */
    public Optional<IFile> ask() {
        SaveAsDialog dialog = new SaveAsDialog(shell);
        dialog.setOriginalFile(session.file());
        return dialog.open() == Window.OK ? Optional.ofNullable(dialog.getResult()).flatMap(this::copy)
                : Optional.empty();
    }

    private Optional<IFile> copy(IPath path) {
        IFile target = ResourcesPlugin.getWorkspace().getRoot().getFile(withSuffix(path));
        try {
            new SafeSave(AtomicFiles::write).save(target, Optional.empty(), session.toBytes(), null);
            return Optional.of(target);
        } catch (CoreException e) {
            ErrorDialog.openError(shell, "Save As", "The copy could not be written.", e.getStatus());
            return Optional.empty();
        }
    }

    private IPath withSuffix(IPath path) {
        DocumentKind kind = DocumentFiles.kind(session.file().getName()).orElseThrow();
        return path.lastSegment().endsWith(kind.suffix()) ? path
                : path.removeLastSegments(1).append(path.removeFileExtension().lastSegment() + kind.suffix());
    }
}
