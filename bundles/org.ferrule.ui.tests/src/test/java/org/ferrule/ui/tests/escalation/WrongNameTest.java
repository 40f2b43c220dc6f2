/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;

import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchWizard;
import org.eclipse.ui.PlatformUI;
import org.ferrule.ui.escalation.sheet.SheetExport;
import org.ferrule.ui.fit.page.WriteFailure;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that will not do, of new documents and of files to write into, are told as such where they are typed. */
class WrongNameTest {

    private final Robot robot = new Robot();
    private IProject project;

    @BeforeEach
    void create() throws CoreException {
        project = Projects.create("Names");
        Projects.write(project, "mine.case.json", CaseSamples.CASE);
    }

    @AfterEach
    void delete() throws CoreException {
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    @Test
    void aNameForANewDocumentThatWillNotDoIsToldWhileItIsTyped() throws CoreException {
        IWorkbench workbench = PlatformUI.getWorkbench();
        IWorkbenchWizard wizard = workbench.getNewWizardRegistry().findWizard("org.ferrule.ui.newCase").createWizard();
        wizard.init(workbench, new StructuredSelection(project));
        WizardDialog dialog = new WizardDialog(workbench.getActiveWorkbenchWindow().getShell(), wizard);
        dialog.setBlockOnOpen(false);
        dialog.open();
        try {
            Map.of("mine", "is there already", "mine.case.json", "already exists", ".case.json", "must stand before",
                    "mine.devices.json", "another kind of document", "a ", "begin or end with a space",
                    "mine.CASE.JSON", "is there already", "a/b", "must not lead into a folder")
                    .forEach((name, words) -> refuses(dialog, name, words));
            type(dialog.getShell(), "yours");
            robot.waitFor("a name that will do", () -> Widgets.button(dialog.getShell(), "Finish").isEnabled());
        } finally {
            dialog.close();
        }
    }

    private void refuses(WizardDialog dialog, String name, String words) {
        type(dialog.getShell(), name);
        robot.waitFor(name + ": " + words, () -> String.valueOf(dialog.getCurrentPage().getErrorMessage())
                .contains(words));
        if (name.equals("mine")) {
            new ScreenPicture().take("wizard-wrong-name");
        }
        assertFalse(Widgets.button(dialog.getShell(), "Finish").isEnabled(), name);
    }

    private void type(Shell shell, String name) {
        Text field = Widgets.labelled(shell, "File name:", Text.class);
        robot.waitFor("the cursor", field::setFocus);
        robot.keys(SWT.CTRL, 'a');
        robot.key(SWT.DEL);
        robot.type(name);
        robot.waitFor("the name " + name, () -> field.getText().equals(name));
    }

    @Test
    void aFileThatCannotBeWrittenIsToldWithTheReason(@TempDir Path folder) throws IOException {
        Path missing = folder.resolve("gone").resolve("plan.pdf");
        assertEquals("there is no folder " + missing.getParent(),
                WriteFailure.words(missing, new NoSuchFileException(missing.toString())));
        assertEquals(folder + " is a folder", WriteFailure.words(folder, new IOException("x")));
        Path denied = folder.resolve("plan.pdf");
        assertEquals("nothing may be written into the folder " + folder,
                WriteFailure.words(denied, new AccessDeniedException(denied.toString())));
        Files.createFile(denied);
        assertEquals("no room left", WriteFailure.words(denied, new IOException("no room left")));
    }

    @Test
    void aSheetGetsTheEndingOfTheFormatThatWasChosen() {
        assertEquals(Path.of("plan.pdf"), SheetExport.target("plan", 0));
        assertEquals(Path.of("plan.svg"), SheetExport.target("plan", 1));
        assertEquals(Path.of("plan.SVG"), SheetExport.target("plan.SVG", 0));
        assertEquals(Path.of("plan.doc.pdf"), SheetExport.target("plan.doc", -1));
        assertTrue(SheetExport.target("a.case", 0).endsWith("a.case.pdf"));
    }
}
