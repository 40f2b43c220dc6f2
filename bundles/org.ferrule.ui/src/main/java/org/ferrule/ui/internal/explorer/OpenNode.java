/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.explorer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.navigator.CommonActionProvider;
import org.eclipse.ui.navigator.ICommonActionConstants;
import org.eclipse.ui.navigator.ICommonActionExtensionSite;
import org.eclipse.ui.navigator.ICommonMenuConstants;
import org.eclipse.ui.navigator.ICommonViewerWorkbenchSite;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.edit.Reveal;

/** Opens the editor of a library on the line or device that is chosen. */
public class OpenNode extends CommonActionProvider {

    private final Action open = new Action("&Open") {
        @Override
        public void run() {
            openSelected();
        }
    };

    private ICommonViewerWorkbenchSite site;

    @Override
    public void init(ICommonActionExtensionSite config) {
        super.init(config);
        site = (ICommonViewerWorkbenchSite) config.getViewSite();
    }

    @Override
    public void fillActionBars(IActionBars bars) {
        if (selected() != null) {
            bars.setGlobalActionHandler(ICommonActionConstants.OPEN, open);
        }
    }

    @Override
    public void fillContextMenu(IMenuManager menu) {
        if (selected() != null) {
            menu.appendToGroup(ICommonMenuConstants.GROUP_OPEN, open);
        }
    }

    private DocumentNode selected() {
        boolean one = getContext() != null && getContext().getSelection() instanceof IStructuredSelection selection
                && selection.size() == 1 && selection.getFirstElement() instanceof DocumentNode;
        return one ? (DocumentNode) ((IStructuredSelection) getContext().getSelection()).getFirstElement() : null;
    }

    private void openSelected() {
        DocumentNode node = selected();
        try {
            Reveal.open(site.getPage(), node.file(), node.path());
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
    }
}
