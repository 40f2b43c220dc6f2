/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.SecondWorkbench;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbench that is left and started again shows the matrix of a chart as it was arranged. */
class MatrixMemoryTest {

    private final Robot robot = new Robot();

    @TempDir
    private Path folder;

    @Test
    void theMatrixLooksAsBeforeWhenTheProgramIsStartedAgain() throws IOException {
        String before = run(MatrixRun.ARRANGE);
        assertTrue(before.contains("exchanged true") && before.contains("sums true"), before);
        assertTrue(before.matches("(?s).*OUTER pinned 1.*INNER pinned 0, lines \\[folded: .*"), before);
        assertEquals(before, run(MatrixRun.LOOK));
    }

    private String run(String task) throws IOException {
        Path outcome = folder.resolve(task);
        try (SecondWorkbench workbench = SecondWorkbench.start(folder, folder.resolve("workspace"),
                Map.of(MatrixRun.TASK, task, MatrixRun.OUTCOME, outcome.toString()))) {
            robot.waitForOther("the outcome of " + task, () -> Files.exists(outcome) || !workbench.running());
            robot.waitForOther("the end of " + task, () -> !workbench.running());
            return Files.exists(outcome) ? Files.readString(outcome) : workbench.output();
        }
    }
}
