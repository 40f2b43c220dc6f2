/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.NotDefinedException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.bindings.Binding;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.keys.IBindingService;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Ctrl+3 finds devices of open projects; no key means two things. */
class QuickAccessTest {
    private static final String LIBRARY = """
            {
              "format": "ferrule.devices",
              "version": 1,
              "title": "Sample library",
              "devices": [
                {
                  "id": "wire-quaternion",
                  "name": "Wire Quaternion",
                  "kind": "guidewire"
                },
                {
                  "id": "wire-b",
                  "name": "Wire B",
                  "kind": "guidewire"
                }
              ]
            }
            """;

    private final Robot robot = new Robot();
    private IProject project;

    @BeforeEach
    void createProject() throws CoreException {
        project = Projects.create("Finding");
    }

    @AfterEach
    void deleteProject() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
    }

    private static Optional<TableItem> found() {
        return Stream.of(Display.getCurrent().getShells()).filter(Shell::isVisible)
                .flatMap(shell -> Widgets.all(shell, Table.class)).flatMap(table -> Stream.of(table.getItems()))
                .filter(QuickAccessTest::isTheDevice).findFirst();
    }

    @Test
    void findsADeviceAndOpensItsLibrary() throws CoreException {
        IFile library = Projects.write(project, "a.devices.json", LIBRARY);
        robot.waitForJobs();
        EditorFixture.page().getWorkbenchWindow().getShell().forceActive();
        EditorFixture.page().getActivePart().setFocus();
        robot.settle();
        robot.keys(SWT.CTRL, '3');
        robot.waitFor("the field", () -> Display.getCurrent().getFocusControl() instanceof Text);
        robot.type("quatern");
        robot.waitFor("the device", () -> found().isPresent());
        new ScreenPicture().take("quick-access");
        Table table = found().orElseThrow().getParent();
        robot.waitFor("the device selected", () -> {
            boolean selected = Stream.of(table.getSelection()).anyMatch(QuickAccessTest::isTheDevice);
            if (!selected) {
                robot.key(SWT.ARROW_DOWN);
            }
            return selected;
        });
        robot.key(SWT.CR);
        robot.waitFor("the library in an editor", () -> opened(library));
    }

    private static boolean isTheDevice(TableItem item) {
        return Stream.of(0, 1).anyMatch(i -> item.getText(i).contains("Wire Quaternion"));
    }

    private static boolean opened(IFile library) {
        IEditorPart editor = EditorFixture.page().getActiveEditor();
        return editor != null && library.equals(editor.getEditorInput().getAdapter(IFile.class));
    }

    @Test
    void noKeyOfOursMeansTwoThings() {
        Map<String, List<Binding>> keys = new HashMap<>();
        for (Binding binding : PlatformUI.getWorkbench().getService(IBindingService.class).getBindings()) {
            if (binding.getParameterizedCommand() != null) {
                keys.computeIfAbsent(binding.getContextId() + " " + binding.getTriggerSequence(),
                        key -> new ArrayList<>()).add(binding);
            }
        }
        List<String> twice = new ArrayList<>();
        keys.forEach((key, bindings) -> {
            boolean ours = bindings.stream().anyMatch(b -> id(b).startsWith("org.ferrule."));
            if (ours && bindings.stream().map(b -> b.getParameterizedCommand()).distinct().count() > 1) {
                twice.add(key + ": " + bindings.stream().map(QuickAccessTest::id).toList());
            }
        });
        assertEquals(List.of(), twice);
        assertTrue(keys.values().stream().flatMap(List::stream).anyMatch(b -> id(b).startsWith("org.ferrule.")));
    }

    private static String id(Binding binding) {
        return binding.getParameterizedCommand().getId();
    }

    @Test
    void everyCommandOfOursHasAName() {
        List<String> nameless = Stream.of(PlatformUI.getWorkbench()
                .getService(ICommandService.class).getDefinedCommands())
                .filter(command -> command.getId().startsWith("org.ferrule.")).filter(command -> {
                    try {
                        return Objects.requireNonNullElse(command.getName(), "").isBlank();
                    } catch (NotDefinedException e) {
                        return true;
                    }
                }).map(command -> command.getId()).toList();
        assertEquals(List.of(), nameless);
    }
}
