/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.ui.WorkbenchIds;
import org.ferrule.ui.escalation.CaseEditor;
import org.ferrule.ui.escalation.live.PlannedCase;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every case that ships opens in the editor and shows its ladder. */
class SeedCasesTest {

    private final Robot robot = new Robot();
    private IProject demo;

    @BeforeEach
    void openDemo() throws CommandException {
        PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_DEMO, null);
        demo = ResourcesPlugin.getWorkspace().getRoot().getProject("Demo");
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(demo);
        robot.settle();
    }

    @ParameterizedTest
    @ValueSource(strings = { "burr-wire-in-place-8-fr", "calcified-bend-6-fr", "closed-7-fr",
        "extension-in-place-6-fr", "occlusion-7-fr", "out-of-reach-6-fr", "small-budget-5-fr", "with-a-log-6-fr" })
    void aCaseThatShipsShowsItsLadder(String name) throws CoreException {
        CaseEditor editor = (CaseEditor) IDE.openEditor(EditorFixture.page(),
                demo.getFile("case-" + name + ".case.json"));
        // a plan of a long ladder takes longer than what a user does
        robot.waitForJobs();
        robot.waitFor("a plan", () -> editor.live().shown().isPresent() && !editor.live().stale());
        new ScreenPicture().take("seed-" + name);
        PlannedCase shown = editor.live().shown().orElseThrow();
        Plan plan = shown.plan();
        String words = editor.ladder().ladder().words();
        assertTrue(editor.live().problems().isEmpty(), editor.live().problems()::toString);
        plan.rungs().forEach(rung -> assertTrue(words.contains(shown.words().rungs().title(rung)), words));
        plan.bailOut().forEach(b -> assertTrue(words.contains(shown.words().status().bailOut(b)), words));
        plan.leftOut().forEach(l -> assertTrue(words.contains(shown.words().leftOut().name(l)), words));
        assertEquals(plan.rungs().size(), plan.rungs().stream()
                .filter(rung -> editor.ladder().ladder().bounds(rung.number()).isPresent()).count());
        assertTrue(words.contains("Limits and scores"), words);
    }
}
