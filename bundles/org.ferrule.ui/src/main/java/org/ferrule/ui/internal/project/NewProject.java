/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.wizards.newresource.BasicNewProjectResourceWizard;
import org.ferrule.ui.internal.build.DocumentNature;

/** Asks for a name and creates a project whose documents are checked. */
public class NewProject extends BasicNewProjectResourceWizard {

    @Override
    public void addPages() {
        super.addPages();
        getPages()[0].setTitle("Ferrule Project");
        getPages()[0].setDescription("A folder for device libraries, rules, charts, techniques, cases and a shelf.");
    }

    @Override
    public boolean performFinish() {
        if (!super.performFinish()) {
            return false;
        }
        try {
            DocumentNature.addTo(getNewProject(), null);
            return true;
        } catch (CoreException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
            return false;
        }
    }
}
