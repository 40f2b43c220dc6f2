/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.ZipFile;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The error report holds the log and the versions, and a document only if it was ticked. */
class ErrorReportTest {
    private static final String SECRET = "Sample rules of nobody's business";

    private static final int PAUSE_MS = 400;

    private final Robot robot = new Robot();
    private IProject project;

    @TempDir
    private Path folder;

    @BeforeEach
    void createProject() throws CoreException {
        project = Projects.create("Report");
        Projects.write(project, "a.rules.json", "{\"format\": \"ferrule.rules\", \"version\": 1, \"title\": \""
                + SECRET + "\"}");
        ILog.of(ErrorReportTest.class).warn("a line for the report");
        robot.waitForJobs();
    }

    @AfterEach
    void deleteProject() throws CoreException {
        Projects.delete(project);
        robot.settle();
    }

    private static Optional<Shell> shell(Predicate<Shell> wanted) {
        return Stream.of(Display.getCurrent().getShells())
                .filter(shell -> shell.isVisible() && shell.getText().equals("Error Report")).filter(wanted)
                .findFirst();
    }

    private static Optional<Shell> dialog() {
        return shell(shell -> Widgets.first(shell, Table.class, table -> true).isPresent());
    }

    private static Optional<Shell> answer() {
        return shell(shell -> Widgets.first(shell, Table.class, table -> true).isEmpty());
    }

    /** The dialog blocks whoever opens it; the rest goes on inside. */
    private Path report(boolean tick) throws CommandException {
        Path target = folder.resolve("report.zip");
        Display.getCurrent().timerExec(PAUSE_MS, () -> fill(target, tick));
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.ferrule.ui.errorReport", null);
        return target;
    }

    private void fill(Path target, boolean tick) {
        robot.waitFor("the dialog", () -> dialog().isPresent());
        Shell dialog = dialog().orElseThrow();
        Text file = Widgets.first(dialog, Text.class, text -> text.getEditable()).orElseThrow();
        robot.replace(file, target.toString());
        if (tick) {
            Table table = Widgets.first(dialog, Table.class, one -> true).orElseThrow();
            Rectangle item = table.getItem(0).getBounds();
            robot.click(table, item.x + 10, item.y + item.height / 2);
            robot.key(SWT.HOME);
            if (!table.getItem(0).getChecked()) {
                robot.type(" ");
            }
            robot.waitFor("the tick", () -> table.getItem(0).getChecked());
        }
        new ScreenPicture().take("error-report");
        Display.getCurrent().timerExec(PAUSE_MS, this::confirm);
        robot.click(Widgets.button(dialog, "Write"));
    }

    /** The answer comes when the dialog has returned to whoever opened it, so nobody may wait for it inside. */
    private void confirm() {
        Optional<Shell> answer = answer();
        answer.ifPresent(shell -> robot.click(Widgets.button(shell, "OK")));
        if (answer.isEmpty() || answer().isPresent()) {
            Display.getCurrent().timerExec(PAUSE_MS, this::confirm);
        }
    }

    private static List<String> names(ZipFile zip) {
        return zip.stream().map(entry -> entry.getName()).toList();
    }

    private static String text(ZipFile zip, String name) throws IOException {
        return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }

    @Test
    void holdsLogAndVersionsButNothingOfTheDocuments() throws CommandException, IOException {
        Path target = report(false);
        try (ZipFile zip = new ZipFile(target.toFile())) {
            assertTrue(text(zip, "log/log").contains("a line for the report"), () -> names(zip).toString());
            assertTrue(text(zip, "versions.txt").contains("org.ferrule.ui "));
            for (String name : names(zip)) {
                assertFalse(text(zip, name).contains(SECRET), name);
            }
        }
    }

    @Test
    void holdsTheDocumentThatIsTicked() throws CommandException, IOException {
        Path target = report(true);
        try (ZipFile zip = new ZipFile(target.toFile())) {
            assertEquals(List.of("documents/Report/a.rules.json"),
                    names(zip).stream().filter(name -> name.startsWith("documents")).toList());
            assertTrue(text(zip, "documents/Report/a.rules.json").contains(SECRET));
        }
    }
}
