/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.FileEditorInput;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.texteditor.ITextEditor;
import org.ferrule.io.json.TextRegion;
import org.ferrule.ui.edit.DocumentEditor;

/** Opens a document as text, at the place of its first problem. */
final class TextOpening {

    private static final String TEXT_EDITOR = "org.eclipse.ui.DefaultTextEditor";

    private TextOpening() {
    }

    static void open(DocumentEditor from, IFile file) {
        try {
            IEditorPart part = from.getSite().getPage().openEditor(new FileEditorInput(file), TEXT_EDITOR, true,
                    IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID);
            if (part instanceof ITextEditor text && !from.session().problemsOfFile().isEmpty()) {
                select(text, from.session().problemsOfFile().get(0).region());
            }
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
    }

    /** A byte order mark may shift offsets, so the place is found by line and column. */
    private static void select(ITextEditor editor, TextRegion region) {
        IDocument document = editor.getDocumentProvider().getDocument(editor.getEditorInput());
        try {
            int offset = document.getLineOffset(region.line() - 1) + region.column() - 1;
            editor.selectAndReveal(offset, Math.min(region.length(), document.getLength() - offset));
        } catch (BadLocationException e) {
            editor.selectAndReveal(0, 0);
        }
    }
}
