/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.List;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Widgets;

/** Every page of the help, over the whole window. */
final class HelpPictures {

    private static final String VIEW = "org.ferrule.ui.help";

    private final Camera camera;

    HelpPictures(Camera camera) {
        this.camera = camera;
    }

    void take() throws CoreException {
        IWorkbenchPage page = EditorFixture.page();
        IViewPart view = page.showView(VIEW);
        page.setPartState(page.getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        camera.robot().settle();
        List contents = Widgets.first(view.getSite().getShell(), List.class, any -> true).orElseThrow();
        for (int i = 0; i < contents.getItemCount(); i++) {
            int line = i;
            camera.take("help-" + contents.getItem(i), () -> show(contents, line));
        }
        page.setPartState(page.getReference(view), IWorkbenchPage.STATE_RESTORED);
        page.hideView(view);
    }

    private void show(List contents, int line) {
        contents.setFocus();
        contents.setSelection(line);
        contents.notifyListeners(SWT.Selection, new Event());
        camera.robot().settle();
    }
}
