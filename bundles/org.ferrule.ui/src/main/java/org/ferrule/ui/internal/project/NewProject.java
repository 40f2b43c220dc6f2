/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.project;

import java.lang.reflect.InvocationTargetException;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.dialogs.WizardNewProjectCreationPage;
import org.eclipse.ui.statushandlers.StatusManager;
import org.eclipse.ui.wizards.newresource.BasicNewResourceWizard;
import org.ferrule.ui.internal.build.DocumentNature;

/** Asks for a name and a place, and creates a project whose documents are checked. */
public class NewProject extends BasicNewResourceWizard {

    private WizardNewProjectCreationPage page;

    @Override
    public void init(IWorkbench workbench, IStructuredSelection selection) {
        super.init(workbench, selection);
        setWindowTitle("New Project");
        setNeedsProgressMonitor(true);
    }

    @Override
    public void addPages() {
        page = new WizardNewProjectCreationPage("project");
        page.setTitle("New Project");
        page.setDescription("A folder for device libraries, rules, charts, techniques, cases and a shelf.");
        addPage(page);
    }

    @Override
    public boolean performFinish() {
        IProject project = page.getProjectHandle();
        IProjectDescription description = project.getWorkspace().newProjectDescription(project.getName());
        description.setLocationURI(page.useDefaults() ? null : page.getLocationURI());
        try {
            getContainer().run(true, false, monitor -> create(project, description, monitor));
        } catch (InvocationTargetException e) {
            StatusManager.getManager().handle(Status.error("The project cannot be made", e.getCause()),
                    StatusManager.SHOW | StatusManager.LOG);
            return false;
        } catch (InterruptedException e) {
            return false;
        }
        selectAndReveal(project);
        return true;
    }

    private static void create(IProject project, IProjectDescription description, IProgressMonitor monitor)
            throws InvocationTargetException {
        SubMonitor progress = SubMonitor.convert(monitor, "Creating " + project.getName(), 3);
        try {
            project.create(description, progress.split(1));
            project.open(progress.split(1));
            DocumentNature.addTo(project, progress.split(1));
        } catch (CoreException e) {
            throw new InvocationTargetException(e);
        }
    }
}
