/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the comparison of revisions. */
public final class ShowRevisions extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            return HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(RevisionView.ID);
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }
}
