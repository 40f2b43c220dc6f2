/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.OutcomeFile;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;

/**
 * What {@link CrashTest} and {@link WarmStartSpeed} let a workbench in another process do, named by a system property; nothing in any other
 * workbench. It writes what has come of it into a file that another property names.
 */
public class SecondRun implements IStartup {
    /** The property that names what to do: {@link #EDIT} or {@link #RECOVER}. */
    static final String TASK = "ferrule.second.task";
    /** The property that names the file for the outcome. */
    static final String OUTCOME = "ferrule.second.outcome";
    /** Opens a document and edits it. */
    static final String EDIT = "edit";
    /** Answers the list of unsaved edits with "Restore", then undoes. */
    static final String RECOVER = "recover";
    /** Opens the demo and a chart, and ends in good order. */
    static final String PREPARE = "prepare";
    /** Tells how many milliseconds the process has lived when its window can be used, and ends in good order. */
    static final String START = "start";
    /** The project with the document. */
    static final String PROJECT = "Crash";

    @Override
    public void earlyStartup() {
        String task = System.getProperty(TASK, "");
        if (!task.isEmpty()) {
            PlatformUI.getWorkbench().getDisplay().asyncExec(() -> report(task));
        }
    }

    private static void report(String task) {
        String outcome;
        try {
            outcome = switch (task) {
                case EDIT -> edit();
                case RECOVER -> recover();
                case PREPARE -> prepare();
                default -> String.valueOf(lived());
            };
        } catch (CoreException | CommandException | RuntimeException | AssertionError e) {
            outcome = "failed: " + e;
        }
        OutcomeFile.write(OUTCOME, outcome);
        if (PREPARE.equals(task) || START.equals(task)) {
            PlatformUI.getWorkbench().close();
        }
    }

    private static long lived() {
        return Duration.between(ProcessHandle.current().info().startInstant().orElseThrow(), Instant.now()).toMillis();
    }

    private static String prepare() throws CoreException, CommandException {
        Robot robot = new Robot();
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        robot.waitForJobs();
        IFile chart = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo")
                .getFile("balloons-through-guides.chart.json");
        IDE.openEditor(EditorFixture.page(), chart);
        robot.waitForJobs();
        return chart.getName();
    }

    private static String edit() throws CoreException {
        Robot robot = new Robot();
        IFile file = Projects.write(Projects.create(PROJECT), Samples.RULES_FILE, Samples.RULES);
        Text field = field(file);
        robot.settle();
        robot.replace(field, "0.07 mm");
        robot.key(SWT.CR);
        robot.waitFor("the change", () -> editor().isDirty() && editor().session().nextUndo() != null);
        return text(file);
    }

    private static String recover() throws CoreException {
        Robot robot = new Robot();
        robot.waitFor("the list", () -> list().isPresent());
        // without a window manager the robot's window lies over it
        list().ifPresent(Shell::forceActive);
        robot.pause(500);
        new ScreenPicture().take("unsaved-edits");
        robot.waitFor("no list", () -> {
            list().ifPresent(shell -> robot.click(Widgets.button(shell, "Restore")));
            return list().isEmpty();
        });
        IFile file = ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT).getFile(Samples.RULES_FILE);
        String restored = text(file) + (editor().isDirty() ? " dirty" : " clean");
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("a clean editor", () -> !editor().isDirty());
        return restored + ", then " + text(file) + " clean";
    }

    private static Optional<Shell> list() {
        return Stream.of(Display.getCurrent().getShells())
                .filter(shell -> shell.isVisible() && "Unsaved Edits".equals(shell.getText())).findFirst();
    }

    private static DocumentEditor editor() {
        return (DocumentEditor) EditorFixture.page().getActiveEditor();
    }

    private static String text(IFile file) throws CoreException {
        return field(file).getText();
    }

    private static Text field(IFile file) throws CoreException {
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), file);
        editor.reveal(Samples.RULE);
        return Widgets.labelled(editor.getActivePageInstance().getPartControl().getParent(), Samples.REQUIRED,
                Text.class);
    }
}
