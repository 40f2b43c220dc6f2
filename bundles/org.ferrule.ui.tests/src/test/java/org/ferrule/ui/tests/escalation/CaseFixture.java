/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.escalation.CaseEditor;
import org.ferrule.ui.escalation.form.CasePage;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;

/** The demo with a case, its techniques and its shelf, and the editor of the case. */
final class CaseFixture implements AutoCloseable {

    private static final Set<DocumentKind> REPLACED = EnumSet.of(DocumentKind.CASE, DocumentKind.TECHNIQUES,
            DocumentKind.SHELF);

    private final Robot robot = new Robot();
    private final IProject project;
    private CaseEditor editor;

    /** Opens the demo by its command and puts the documents in the place of its own. */
    CaseFixture() throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        for (IResource member : project.members()) {
            if (DocumentKind.ofFileName(member.getName()).filter(REPLACED::contains).isPresent()) {
                member.delete(true, null);
            }
        }
        Projects.write(project, CaseSamples.TECHNIQUES_FILE, CaseSamples.TECHNIQUES);
        Projects.write(project, CaseSamples.SHELF_FILE, CaseSamples.SHELF);
        Projects.write(project, CaseSamples.CASE_FILE, CaseSamples.CASE);
        robot.settle();
    }

    /** Opens the case and waits for its plan. */
    void open() throws CoreException {
        editor = (CaseEditor) IDE.openEditor(EditorFixture.page(), file(CaseSamples.CASE_FILE));
        waitForPlan();
        editor.setFocus();
        robot.settle();
    }

    /** Opens the case, logs that its first step failed, and shows the page of the case. */
    void openPageWithAnEntry() throws CoreException {
        open();
        press('f');
        enter();
        robot.waitFor("an entry", () -> document().getLog().size() == 1);
        waitForPlan();
        editor.setActivePage(CasePage.ID);
        robot.settle();
    }

    void waitForPlan() {
        robot.waitFor("a plan", () -> editor.live().shown().isPresent() && !editor.live().stale());
    }

    Robot robot() {
        return robot;
    }

    IFile file(String name) {
        return project.getFile(name);
    }

    CaseEditor editor() {
        return editor;
    }

    CaseDocument document() {
        return (CaseDocument) editor.session().document().orElseThrow();
    }

    Plan plan() {
        return editor.live().shown().orElseThrow().plan();
    }

    /** The ids of the steps, in their order. */
    List<String> steps() {
        return plan().rungs().stream().map(rung -> rung.move().id()).toList();
    }

    /** Presses a key on the ladder. */
    void press(char key) {
        robot.click(editor.ladder().ladder().canvas(), 4, 4);
        robot.type(String.valueOf(key));
        robot.settle();
    }

    void enter() {
        robot.key(SWT.CR);
        robot.settle();
    }

    @Override
    public void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }
}
