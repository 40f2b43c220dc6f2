/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.escalation.closing;

import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.escalation.live.LivePlan;

/** Closes a case after asking. What else changes is opened, so that it can be looked at, undone and saved. */
public final class CloseCase {

    private final LivePlan live;
    private final IWorkbenchPage page;

    /** Closes the case of a plan; other documents are opened in the page. */
    public CloseCase(LivePlan live, IWorkbenchPage page) {
        this.live = live;
        this.page = page;
    }

    /** Shows what closing does, and does it when that is agreed to. */
    public void ask(Shell shell) {
        new CloseDialog(shell, live, this::close).open();
    }

    private void close(ClosingReview review, boolean counting, boolean taking) {
        ClosingEdits edits = new ClosingEdits(live, review);
        String techniques = live.file().orElseThrow().getTechniques();
        String shelf = live.file().orElseThrow().getShelf();
        IWorkbenchPart active = page.getActivePart();
        if (counting && open(techniques)) {
            edits.count();
        }
        if (taking && open(shelf)) {
            edits.take();
        }
        edits.close();
        page.activate(active);
    }

    private boolean open(String path) {
        DocumentSession session = live.documents().session(path).orElseThrow();
        try {
            IDE.openEditor(page, session.file(), false);
            return true;
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
            return false;
        }
    }
}
