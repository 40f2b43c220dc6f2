/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.welcome;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchSite;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.wizards.IWizardDescriptor;

/** Opens wizards from elsewhere than the menus. */
final class NewWizards {

    /** The wizard for a new project. */
    static final String NEW_PROJECT = "org.ferrule.ui.newProject";

    private NewWizards() {
    }

    static void open(IWorkbenchSite site, String wizard) {
        IWizardDescriptor descriptor = PlatformUI.getWorkbench().getNewWizardRegistry().findWizard(wizard);
        try {
            IWorkbenchWizard made = descriptor.createWizard();
            made.init(PlatformUI.getWorkbench(), StructuredSelection.EMPTY);
            new WizardDialog(site.getShell(), made).open();
        } catch (CoreException e) {
            ILog.of(NewWizards.class).log(e.getStatus());
        }
    }
}
