/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.help;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.ferrule.ui.help.HelpPage;
import org.ferrule.ui.help.HelpPages;

/** Opens the page about the active part, or the first page. */
public class ShowHelp extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            HelpPages.open(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage(),
                    pageFor(HandlerUtil.getActivePart(event)));
        } catch (PartInitException e) {
            throw new ExecutionException("The help cannot be opened", e);
        }
        return null;
    }

    private static String pageFor(IWorkbenchPart part) {
        return part == null ? HelpPages.FIRST
                : HelpPages.about(part.getSite().getId()).map(HelpPage::id).orElse(HelpPages.FIRST);
    }
}
