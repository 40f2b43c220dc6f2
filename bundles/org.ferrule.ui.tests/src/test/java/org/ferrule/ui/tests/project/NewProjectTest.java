/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The wizard for a new project asks for a name and a place, and for nothing of an IDE. */
class NewProjectTest {

    private final Robot robot = new Robot();
    private final IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject("cathlab");

    @AfterEach
    void delete() throws CoreException {
        robot.waitForJobs();
        Projects.delete(project);
    }

    @Test
    void projectIsMadeInWhichDocumentsAreChecked() throws CoreException {
        IWorkbench workbench = PlatformUI.getWorkbench();
        IWorkbenchWizard wizard = workbench.getNewWizardRegistry().findWizard("org.ferrule.ui.newProject")
                .createWizard();
        wizard.init(workbench, StructuredSelection.EMPTY);
        WizardDialog dialog = new WizardDialog(workbench.getActiveWorkbenchWindow().getShell(), wizard);
        dialog.setBlockOnOpen(false);
        dialog.open();
        Shell shell = dialog.getShell();
        Text name = Widgets.labelled(shell, "Project name:", Text.class);
        name.setFocus();
        robot.waitFor("the cursor", name::isFocusControl);
        robot.type("cathlab");
        robot.waitFor("a name", () -> Widgets.button(shell, "Finish").isEnabled());
        new ScreenPicture().take("wizard-new-project");
        new Dialogs(robot).close(shell, Widgets.button(shell, "Finish"));
        robot.waitFor("the project", project::exists);
        assertTrue(project.hasNature("org.ferrule.ui.nature"));
    }
}
