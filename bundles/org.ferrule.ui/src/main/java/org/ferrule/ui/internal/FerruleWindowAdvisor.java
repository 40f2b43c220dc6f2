/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PerspectiveAdapter;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** What every window of the workbench has: size, menus, status line and progress. */
class FerruleWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final List<String> UNUSED_ACTION_SETS = List.of("org.eclipse.ui.actionSet.openFiles",
            "org.eclipse.ui.edit.text.actionSet.convertLineDelimitersTo",
            "org.eclipse.ui.edit.text.actionSet.annotationNavigation", "org.eclipse.ui.edit.text.actionSet.navigation",
            "org.eclipse.ui.actionSet.keyBindings", "org.eclipse.ui.NavigateActionSet",
            "org.eclipse.ui.WorkingSetActionSet", "org.eclipse.ui.WorkingSetModificationActionSet",
            "org.eclipse.team.ui.actionSet");
    private static final Point INITIAL_SIZE = new Point(1280, 860);

    FerruleWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new FerruleActionBarAdvisor(configurer);
    }

    /** Action sets of the platform cannot be taken out of it, only hidden, and a perspective that is reset shows them. */
    @Override
    public void postWindowOpen() {
        IWorkbenchWindow window = getWindowConfigurer().getWindow();
        hideActionSets(window.getActivePage());
        window.addPerspectiveListener(new PerspectiveAdapter() {
            @Override
            public void perspectiveActivated(IWorkbenchPage page, IPerspectiveDescriptor perspective) {
                hideActionSets(page);
            }

            @Override
            public void perspectiveChanged(IWorkbenchPage page, IPerspectiveDescriptor perspective, String change) {
                if (IWorkbenchPage.CHANGE_RESET_COMPLETE.equals(change)) {
                    hideActionSets(page);
                }
            }
        });
    }

    private static void hideActionSets(IWorkbenchPage page) {
        if (page != null) {
            UNUSED_ACTION_SETS.forEach(page::hideActionSet);
        }
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
        window.setInitialSize(new Point(Math.min(INITIAL_SIZE.x, screen.width), Math.min(INITIAL_SIZE.y,
                screen.height)));
        window.setTitle("Ferrule");
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
        window.setShowPerspectiveBar(false);
    }
}
