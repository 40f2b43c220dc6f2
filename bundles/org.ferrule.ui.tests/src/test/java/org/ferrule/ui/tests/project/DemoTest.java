/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.navigator.CommonNavigator;
import org.eclipse.ui.navigator.CommonViewer;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The demo opens, holds no errors, and shows its devices in the explorer. */
class DemoTest {

    private final Robot robot = new Robot();
    private IProject demo;

    @BeforeEach
    void openDemo() throws CommandException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        demo = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot.waitForJobs();
    }

    @AfterEach
    void deleteDemo() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(demo);
        robot.settle();
    }

    private static CommonViewer explorer() {
        return ((CommonNavigator) EditorFixture.page().findView(ProjectExplorer.VIEW_ID)).getCommonViewer();
    }

    private List<IFile> documents(String suffix) throws CoreException {
        List<IFile> files = new ArrayList<>();
        for (IResource member : demo.members()) {
            if (DocumentFiles.isDocument(member) && member.getName().endsWith(suffix)) {
                files.add((IFile) member);
            }
        }
        return files;
    }

    @Test
    void holdsLibrariesRulesAndCharts() throws CoreException {
        assertTrue(documents(".devices.json").size() > 1);
        assertEquals(1, documents(".rules.json").size());
        assertEquals(10, documents(".chart.json").size());
    }

    @Test
    void isChecked() throws CoreException {
        assertTrue(demo.hasNature("org.ferrule.ui.nature"));
        assertEquals("org.ferrule.ui.builder", demo.getDescription().getBuildSpec()[0].getBuilderName());
    }

    @Test
    void hasNoErrors() throws CoreException {
        IMarker[] markers = demo.findMarkers(IMarker.PROBLEM, true, IResource.DEPTH_INFINITE);
        assertEquals(List.of(), Stream.of(markers)
                .filter(marker -> marker.getAttribute(IMarker.SEVERITY, 0) == IMarker.SEVERITY_ERROR)
                .map(marker -> marker.getResource().getName() + ": " + marker.getAttribute(IMarker.MESSAGE, ""))
                .toList());
    }

    @Test
    void explorerShowsDevicesInTheirLines() throws CoreException {
        ITreeContentProvider content = (ITreeContentProvider) explorer().getContentProvider();
        IFile library = documents(".devices.json").get(0);
        Object[] lines = content.getChildren(library);
        assertTrue(lines.length > 0);
        explorer().expandToLevel(library, 2);
        robot.settle();
        new ScreenPicture().take("explorer");
        assertTrue(content.getChildren(lines[0]).length > 0, "the first line has devices");
    }

    @Test
    void opensTwiceAsOneProject() throws CommandException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        assertEquals(1, Stream.of(ResourcesPlugin.getWorkspace().getRoot().getProjects())
                .filter(project -> project.getName().startsWith("Demo")).count());
    }
}
