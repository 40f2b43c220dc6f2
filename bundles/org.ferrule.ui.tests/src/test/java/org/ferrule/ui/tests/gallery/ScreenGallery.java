/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.gallery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Themes;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Takes pictures of everything in one theme after the other. No part of the build, as its name tells: releng/screenshots
 * runs it at several zooms.
 */
class ScreenGallery {
    /** In points: twice as many pixels at 200 %. */
    private static final Rectangle FRAME = new Rectangle(0, 0, Integer.getInteger("ferrule.gallery.width", 1500),
            Integer.getInteger("ferrule.gallery.height", 950));
    private static final String ZOOM = System.getProperty("ferrule.gallery.zoom", "100");

    private final Robot robot = new Robot();
    private IProject demo;

    /** Tells whether a part belongs to this workbench and not to the platform. */
    static boolean isOurs(String id) {
        return id.startsWith("org.ferrule.");
    }

    @BeforeEach
    void openDemo() throws CommandException {
        Shell shell = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
        fill(shell);
        run(WorkbenchIds.OPEN_DEMO);
        demo = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot.waitForJobs();
    }

    /** The toolkit takes off for a frame what it happens to measure, even where nobody draws one. */
    private static void fill(Shell shell) {
        Point size = shell.getSize();
        Rectangle room = shell.getClientArea();
        shell.setBounds(FRAME.x, FRAME.y, size.x + FRAME.width - room.width, size.y + FRAME.height - room.height);
    }

    private static void run(String command) throws CommandException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(command, null);
    }

    @AfterEach
    void deleteDemo() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(demo);
        Themes.LIGHT.choose(robot);
    }

    @ParameterizedTest
    @EnumSource
    void showsEverything(Themes theme) throws CoreException, CommandException, IOException {
        EditorFixture.page().closeAllEditors(false);
        theme.choose(robot);
        try (Camera camera = new Camera(robot, FRAME, theme.name().toLowerCase(Locale.ROOT) + "-" + ZOOM)) {
            take(camera);
            note(camera.failures());
            assertEquals(List.of(), camera.failures());
            assertTrue(camera.taken() > 90, () -> "only " + camera.taken() + " pictures");
        }
    }

    /** The build goes on with the other zoom; so what is missing is told where the pictures are. */
    private static void note(List<String> missing) throws IOException {
        if (!missing.isEmpty()) {
            Files.write(Path.of(System.getProperty("ferrule.screenshots", "target/screenshots"), "missing.txt"),
                    missing,
                    StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
    }

    private void take(Camera camera) throws CoreException, CommandException {
        run("org.ferrule.ui.showWelcome");
        camera.take("welcome");
        EditorPictures editors = new EditorPictures(camera, demo);
        editors.take();
        new ViewPictures(camera, editors, demo).take();
        new DialogPictures(camera, demo).take();
        new DocumentDialogPictures(camera, editors).take();
        new HelpPictures(camera).take();
    }
}
