/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.navigator.ILinkHelper;
import org.eclipse.ui.part.FileEditorInput;
import org.ferrule.ui.edit.DocumentEditor;

/** Keeps explorer and editors together, if the user has asked for that. */
public class DocumentLinks implements ILinkHelper {

    @Override
    public IStructuredSelection findSelection(IEditorInput input) {
        IFile file = input.getAdapter(IFile.class);
        return file == null ? StructuredSelection.EMPTY : new StructuredSelection(file);
    }

    @Override
    public void activateEditor(IWorkbenchPage page, IStructuredSelection selection) {
        if (selection.getFirstElement() instanceof DocumentNode node) {
            IEditorPart editor = page.findEditor(new FileEditorInput(node.file()));
            if (editor instanceof DocumentEditor document) {
                page.bringToTop(editor);
                document.reveal(node.path());
            }
        }
    }
}
