/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.Status;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.problem.ProblemMarkers;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Markers appear with their line, also for what is not saved yet, and lead to the field. */
class ProblemMarkerTest {

    private static final String LIBRARY = """
            {
              "format": "ferrule.devices",
              "version": 1,
              "title": "Sample library",
              "devices": [
                {
                  "id": "wire-a",
                  "name": "Wire A",
                  "kind": "guidewire",
                  "effectiveLength": "1900 mm"
                }
              ]
            }
            """;
    private static final String RULES = """
            {
              "format": "ferrule.rules",
              "version": 1,
              "title": "Sample rules",
              "clearances": [
                {
                  "required": "0.05 mm"
                }
              ]
            }
            """;

    private final Robot robot = new Robot();
    private IProject project;

    @BeforeEach
    void createProject() throws CoreException {
        project = Projects.create("Markers");
    }

    @AfterEach
    void deleteProject() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
    }

    private static IMarker[] errors(IFile file) {
        try {
            return Stream.of(file.findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO))
                    .filter(m -> m.getAttribute(IMarker.SEVERITY, -1) == IMarker.SEVERITY_ERROR)
                    .toArray(IMarker[]::new);
        } catch (CoreException e) {
            throw new AssertionError(Status.error("markers", e).toString(), e);
        }
    }

    @Test
    void unreadableDimensionIsMarkedAtItsLine() throws CoreException {
        IFile file = Projects.write(project, "a.devices.json", LIBRARY.replace("1900 mm", "1900"));
        robot.waitFor("a marker", () -> errors(file).length == 1);
        IMarker marker = errors(file)[0];
        assertEquals(10, marker.getAttribute(IMarker.LINE_NUMBER, -1));
        assertEquals("devices[wire-a]", marker.getAttribute(ProblemMarkers.PATH, ""));
        assertEquals("effectiveLength", marker.getAttribute(ProblemMarkers.FEATURE, ""));
    }

    @Test
    void brokenDocumentIsMarkedAtItsLine() throws CoreException {
        IFile file = Projects.write(project, "a.devices.json", LIBRARY.replace("\"version\": 1,", "\"version\": 1"));
        robot.waitFor("a marker", () -> errors(file).length == 1);
        assertEquals(4, errors(file)[0].getAttribute(IMarker.LINE_NUMBER, -1));
    }

    @Test
    void markerGoesWhenTheTextIsPutRight() throws CoreException {
        IFile file = Projects.write(project, "a.devices.json", LIBRARY.replace("1900 mm", "1900"));
        robot.waitFor("a marker", () -> errors(file).length == 1);
        Projects.write(project, "a.devices.json", LIBRARY);
        robot.waitFor("no marker", () -> errors(file).length == 0);
    }

    @Test
    void chartIsMarkedWhenItsLibraryIsMissingAndNoMoreWhenItComes() throws CoreException {
        IFile chart = Projects.write(project, "a.chart.json", """
                {
                  "format": "ferrule.chart",
                  "version": 1,
                  "title": "Sample chart",
                  "libraries": ["late.devices.json"]
                }
                """);
        robot.waitFor("a marker for the missing library", () -> Stream.of(errors(chart))
                .anyMatch(m -> m.getAttribute(IMarker.MESSAGE, "").contains("late.devices.json")));
        Projects.write(project, "late.devices.json", LIBRARY);
        robot.waitFor("no marker for the library", () -> Stream.of(errors(chart))
                .noneMatch(m -> m.getAttribute(IMarker.MESSAGE, "").contains("late.devices.json")));
    }

    @Test
    void unsavedChangeIsMarkedAndDroppedByClosing() throws CoreException {
        IFile file = Projects.write(project, "a.rules.json", RULES);
        DocumentEditor editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), file);
        robot.waitForJobs();
        editor.reveal("clearances[0]");
        Text field = field(editor);
        robot.replace(field, "70 mm");
        robot.key(SWT.CR);
        robot.waitFor("a marker for the unsaved figure", () -> warnings(file) == 1);
        new ScreenPicture().take("unsaved-marker");
        EditorFixture.page().closeAllEditors(false);
        robot.waitFor("no marker", () -> warnings(file) == 0);
    }

    private static Text field(DocumentEditor editor) {
        return Widgets.labelled(editor.getActivePageInstance().getPartControl().getParent(), "Required clearance",
                Text.class);
    }

    private static long warnings(IFile file) {
        try {
            return Stream.of(file.findMarkers(ProblemMarkers.TYPE, true, IResource.DEPTH_ZERO))
                    .filter(m -> m.getAttribute(IMarker.MESSAGE, "").contains("70 mm")).count();
        } catch (CoreException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void markerLeadsToItsField() throws CoreException {
        IFile file = Projects.write(project, "a.rules.json", RULES.replace("0.05 mm", "0,05 mm"));
        robot.waitFor("a marker", () -> atRequired(file).isPresent());
        IEditorPart editor = IDE.openEditor(EditorFixture.page(), atRequired(file).orElseThrow());
        robot.settle();
        assertTrue(editor instanceof DocumentEditor, String.valueOf(editor));
        Text field = field((DocumentEditor) editor);
        robot.waitFor("the cursor in the field", field::isFocusControl);
    }

    private static Optional<IMarker> atRequired(IFile file) {
        return Stream.of(errors(file)).filter(m -> m.getAttribute(ProblemMarkers.FEATURE, "").equals("required"))
                .findFirst();
    }
}
