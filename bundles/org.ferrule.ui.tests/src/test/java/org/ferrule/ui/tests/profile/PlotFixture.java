/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.profile;

import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.tests.robot.Dialogs;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;

/** A view that plots chosen devices of the demo, over the whole window, with nothing chosen yet. */
final class PlotFixture implements AutoCloseable {

    private final Robot robot = new Robot();
    private final Dialogs dialogs = new Dialogs(robot);
    private final IProject project;
    private final IViewPart view;

    PlotFixture(String viewId) throws CommandException, CoreException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        project = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        view = EditorFixture.page().showView(viewId);
        robot.waitForJobs();
        robot.waitFor("the view over all", this::isMaximized);
        clear();
    }

    Robot robot() {
        return robot;
    }

    Dialogs dialogs() {
        return dialogs;
    }

    IProject project() {
        return project;
    }

    IViewPart view() {
        return view;
    }

    Shell body() {
        return view.getSite().getShell();
    }

    private boolean isMaximized() {
        IWorkbenchPage page = EditorFixture.page();
        page.activate(view);
        page.setPartState(page.getReference(view), IWorkbenchPage.STATE_MAXIMIZED);
        return page.getPartState(page.getReference(view)) == IWorkbenchPage.STATE_MAXIMIZED;
    }

    /** The view remembers what was chosen, even when it was closed. */
    private void clear() {
        Widgets.all(body(), Table.class).filter(t -> t.isVisible() && !t.getHeaderVisible()).toList()
                .forEach(table -> {
                    robot.waitFor("the devices of the project", () -> Stream.of(table.getItems())
                            .noneMatch(item -> item.getText().endsWith("(not there)")));
                    table.setFocus();
                    table.selectAll();
                    robot.key(SWT.DEL);
                    robot.waitFor("nothing chosen", () -> table.getItemCount() == 0);
                });
    }

    /** Adds a device by one of the buttons for that, whose dialog has that title. */
    void add(int which, String title, String words) {
        Button button = Widgets.all(body(), Button.class).filter(b -> b.getText().equals("Add...") && b.isVisible())
                .toList().get(which);
        dialogs.open(() -> robot.click(button), title, shell -> {
            Text filter = Widgets.first(shell, Text.class, any -> true).orElseThrow();
            robot.replace(filter, words);
            robot.pause(300);
            dialogs.close(shell, Widgets.button(shell, "OK"));
        });
    }

    @Override
    public void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        EditorFixture.page().setPartState(EditorFixture.page().getReference(view), IWorkbenchPage.STATE_RESTORED);
        EditorFixture.page().hideView(view);
        robot.waitForJobs();
        Projects.delete(project);
        robot.settle();
    }
}
