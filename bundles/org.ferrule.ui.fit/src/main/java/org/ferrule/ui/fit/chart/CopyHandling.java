/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.chart;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.handlers.IHandlerActivation;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.fit.matrix.MatrixTable;

/** Copies the selected cells while the matrix has the focus; fields beside it copy their own text. */
final class CopyHandling {

    private final IHandlerService handlers;
    private final MatrixTable table;
    private IHandlerActivation activation;

    CopyHandling(IWorkbenchPartSite site, MatrixTable table) {
        this.handlers = site.getService(IHandlerService.class);
        this.table = table;
    }

    void install() {
        table.control().addListener(SWT.FocusIn, event -> activate());
        table.control().addListener(SWT.FocusOut, event -> deactivate());
        table.control().addListener(SWT.Dispose, event -> deactivate());
    }

    private void activate() {
        if (activation == null) {
            activation = handlers.activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new AbstractHandler() {
                @Override
                public Object execute(ExecutionEvent event) {
                    copy(table);
                    return null;
                }
            });
        }
    }

    private void deactivate() {
        if (activation != null) {
            handlers.deactivateHandler(activation);
            activation = null;
        }
    }

    /** Puts the selected cells into the clipboard, with tabs between. */
    static void copy(MatrixTable table) {
        String text = table.selectedText();
        if (text.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(table.control().getDisplay());
        try {
            clipboard.setContents(new Object[] { text },
                    new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }
}
