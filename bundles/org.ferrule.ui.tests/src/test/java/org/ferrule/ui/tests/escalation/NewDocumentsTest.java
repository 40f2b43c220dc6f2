/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wizards make documents that open in their editors without an error. */
class NewDocumentsTest {

    private final Robot robot = new Robot();
    private final AtomicReference<Throwable> failure = new AtomicReference<>();
    private IProject project;

    @BeforeEach
    void create() throws CoreException {
        project = Projects.create("Fresh");
    }

    @AfterEach
    void delete() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }

    private static Optional<Shell> wizard(String title) {
        return Stream.of(Display.getCurrent().getShells()).filter(shell -> shell.getText().equals(title))
                .filter(Shell::isVisible).findFirst();
    }

    @ParameterizedTest
    @CsvSource({ "org.ferrule.ui.newCase, New Case, .case.json",
        "org.ferrule.ui.newShelf, New Shelf, .shelf.json",
        "org.ferrule.ui.newTechniques, New Technique Library, .techniques.json" })
    void aDocumentIsMadeAndOpened(String id, String title, String suffix) throws CommandException {
        Display.getCurrent().asyncExec(() -> answer(title, suffix));
        Command command = PlatformUI.getWorkbench().getService(ICommandService.class)
                .getCommand(IWorkbenchCommandConstants.FILE_NEW);
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(ParameterizedCommand
                .generateCommand(command, Map.of(IWorkbenchCommandConstants.FILE_NEW_PARM_WIZARDID, id)), null);
        if (failure.get() != null) {
            fail(failure.get());
        }
        robot.waitFor("the editor", () -> EditorFixture.page().getActiveEditor() instanceof DocumentEditor);
        DocumentEditor editor = (DocumentEditor) EditorFixture.page().getActiveEditor();
        assertEquals("mine" + suffix, editor.getEditorInput().getName());
        assertTrue(editor.session().editable());
        assertEquals(List.of(), editor.session().problemsOfFile());
        if (id.endsWith("Case")) {
            robot.waitFor("the problem", () -> problems(editor.session().file()).contains("\"libraries\" is missing"));
        }
        new ScreenPicture().take("new" + suffix.replace('.', '-'));
    }

    private static List<String> problems(IFile file) {
        try {
            return Stream.of(file.findMarkers(IMarker.PROBLEM, true, IResource.DEPTH_ZERO))
                    .map(marker -> marker.getAttribute(IMarker.MESSAGE, "")).toList();
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    /** Runs while the wizard is open; whatever goes wrong closes it, so that nobody waits for it. */
    private void answer(String title, String suffix) {
        try {
            robot.waitFor("the wizard", () -> wizard(title).isPresent());
            Shell shell = wizard(title).orElseThrow();
            Text name = Widgets.all(shell, Text.class).filter(text -> text.getText().equals("new" + suffix))
                    .findFirst().orElseThrow();
            Text folder = Widgets.all(shell, Text.class).filter(text -> text != name).findFirst().orElseThrow();
            replace(folder, "Fresh");
            replace(name, "mine");
            robot.waitFor("a name that will do", () -> Widgets.button(shell, "Finish").isEnabled());
            robot.clickUntil("the end of the wizard", Widgets.button(shell, "Finish"),
                    () -> shell.isDisposed() || !shell.isVisible());
        } catch (AssertionError | RuntimeException e) {
            failure.set(e);
            wizard(title).ifPresent(Shell::close);
        }
    }

    private void replace(Text field, String words) {
        robot.click(field);
        robot.waitFor("the focus", field::isFocusControl);
        field.selectAll();
        robot.key(SWT.DEL);
        robot.type(words);
    }
}
