/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit;

import org.eclipse.core.resources.IFile;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;

/** Opens documents on one of their objects. */
public final class Reveal {

    private Reveal() {
    }

    /**
     * Opens the editor of the file, or brings it to the top, and shows an object in it.
     *
     * @param path the object, see {@link org.ferrule.ui.document.ElementPath}; empty for the document
     * @throws PartInitException if there is no editor for the file
     */
    public static IEditorPart open(IWorkbenchPage page, IFile file, String path) throws PartInitException {
        IEditorPart editor = IDE.openEditor(page, file, true);
        if (editor instanceof DocumentEditor document && !path.isEmpty()) {
            document.reveal(path);
        }
        return editor;
    }
}
