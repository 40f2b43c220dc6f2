/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.SecondWorkbench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbench in another process is killed while a document is dirty; the next one offers the edits. */
class CrashTest {
    private static final String JOURNAL = "workspace/.metadata/.plugins/org.ferrule.ui/unsaved";

    private final Robot robot = new Robot();

    @TempDir
    private Path folder;

    @Test
    void unsavedEditIsRestoredAfterAKillAndCanBeUndone() throws IOException {
        try (SecondWorkbench killed = start(SecondRun.EDIT)) {
            waitForOutcome(killed, SecondRun.EDIT);
            robot.waitFor("the journal", () -> journal().size() == 1);
        }
        assertEquals("0.07 mm", outcome(SecondRun.EDIT));
        try (SecondWorkbench next = start(SecondRun.RECOVER)) {
            waitForOutcome(next, SecondRun.RECOVER);
            assertEquals("0.07 mm dirty, then 0.05 mm clean", outcome(SecondRun.RECOVER));
            robot.waitFor("nothing left", () -> journal().isEmpty());
        }
        assertEquals(Samples.RULES, Files.readString(folder.resolve("workspace/" + SecondRun.PROJECT + "/"
                + Samples.RULES_FILE)), "nothing was saved");
    }

    private SecondWorkbench start(String task) throws IOException {
        return SecondWorkbench.start(folder, folder.resolve("workspace"),
                Map.of(SecondRun.TASK, task, SecondRun.OUTCOME, folder.resolve(task).toString()));
    }

    private void waitForOutcome(SecondWorkbench workbench, String task) {
        robot.waitForOther("the outcome of " + task,
                () -> Files.exists(folder.resolve(task)) || !workbench.running());
        assertTrue(workbench.running(), workbench::output);
    }

    private String outcome(String task) throws IOException {
        return Files.readString(folder.resolve(task));
    }

    private List<Path> journal() {
        Path kept = folder.resolve(JOURNAL);
        if (!Files.isDirectory(kept)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(kept)) {
            return files.filter(file -> file.toString().endsWith(".unsaved")).toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
