/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** What every window of the workbench has: size, menus, status line and progress. */
class FerruleWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point INITIAL_SIZE = new Point(1280, 860);

    FerruleWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new FerruleActionBarAdvisor(configurer);
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
