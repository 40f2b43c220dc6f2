/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import java.util.stream.Stream;

import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.ferrule.ui.edit.DocumentEditor;

/**
 * Takes away what the workbench shows in the place of an editor whose opening the user has cancelled: a nameless tab, which
 * would come to the front, instead of the file, when the file is opened again.
 */
public final class CancelledOpening {

    private CancelledOpening() {
    }

    /** Takes it away as soon as the workbench has put it there. */
    public static void clear(IEditorSite site, IEditorInput input) {
        IWorkbenchPage page = site.getPage();
        String id = site.getId();
        site.getShell().getDisplay().asyncExec(() -> close(page, input, id));
    }

    private static void close(IWorkbenchPage page, IEditorInput input, String id) {
        IEditorReference[] left = Stream
                .of(page.findEditors(input, id, IWorkbenchPage.MATCH_INPUT | IWorkbenchPage.MATCH_ID))
                .filter(editor -> !(editor.getEditor(false) instanceof DocumentEditor))
                .toArray(IEditorReference[]::new);
        page.closeEditors(left, false);
    }
}
