/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.SecondWorkbench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Measures how long a process lives until its window can be used: the demo's project is there, a chart was left open, and
 * the same configuration has started before. No part of the build, as its name tells; docs/performance.md has the result.
 */
class WarmStartSpeed {
    private static final int STARTS = 5;
    /** Seconds: the first start checks all documents of the demo. */
    private static final int PATIENCE = 300;

    private final Robot robot = new Robot();

    @TempDir
    private Path folder;

    @Test
    void measuresStartsOfAWorkspaceWithTheDemo() throws IOException {
        run(SecondRun.PREPARE);
        List<String> milliseconds = new ArrayList<>();
        for (int i = 0; i < STARTS; i++) {
            milliseconds.add(run(SecondRun.START));
        }
        System.out.println("speed: warm starts, milliseconds: " + milliseconds);
        assertTrue(milliseconds.stream().allMatch(text -> text.matches("\\d+")), milliseconds.toString());
    }

    private String run(String task) throws IOException {
        Path outcome = folder.resolve("outcome");
        Files.deleteIfExists(outcome);
        try (SecondWorkbench workbench = SecondWorkbench.start(folder, folder.resolve("workspace"),
                Map.of(SecondRun.TASK, task, SecondRun.OUTCOME, outcome.toString()))) {
            for (int i = 0; i < PATIENCE && workbench.running() && !Files.exists(outcome); i++) {
                robot.pause(1_000);
            }
            robot.waitForOther("the end of " + task, () -> !workbench.running());
            return Files.exists(outcome) ? Files.readString(outcome) : workbench.output();
        }
    }
}
