/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.ui.tests.escalation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.ui.escalation.ladder.LadderCanvas;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Why the steps stand in their order is unfolded in the ladder. */
class ReasonsTest {

    private CaseFixture fixture;

    @BeforeEach
    void open() throws CommandException, CoreException {
        fixture = new CaseFixture();
        fixture.open();
        fixture.robot().waitFor("what the order hangs on",
                () -> fixture.editor().live().shown().orElseThrow().reasons().isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private LadderCanvas ladder() {
        return fixture.editor().ladder().ladder();
    }

    @Test
    void aKeyUnfoldsWhyTheSelectedStepStandsWhereItStands() {
        assertFalse(ladder().words().contains("the order stays with a chance"), ladder()::words);
        fixture.press('w');
        fixture.robot().waitFor("the reasons", () -> ladder().words().contains("the order stays with a chance"));
        new ScreenPicture().take("ladder-why-step");
        assertTrue(ladder().words().contains("by its cost per chance")
                || ladder().words().contains("taken together"), ladder()::words);
        fixture.press('w');
        fixture.robot().waitFor("no reasons", () -> !ladder().words().contains("the order stays with a chance"));
    }

    @Test
    void aKeyUnfoldsWhatTheWholeOrderHangsOn() {
        assertFalse(ladder().words().contains("It changes first with"), ladder()::words);
        fixture.press('o');
        fixture.robot().waitFor("the reasons", () -> ladder().words().contains("It changes first with"));
        new ScreenPicture().take("ladder-why-order");
        assertTrue(ladder().words().contains("conventional order"), ladder()::words);
        assertTrue(ladder().words().contains("taken as independent"), ladder()::words);
    }

    @Test
    void aClickOnAHeadingUnfoldsItAndSelectsItsStep() {
        Rectangle heading = ladder().foldOf(2).orElseThrow();
        fixture.robot().clickPainted(ladder().canvas(), heading.x + 10, heading.y + heading.height / 2);
        assertEquals(2, ladder().selected().orElseThrow().number());
        assertTrue(ladder().words().contains("the order stays with"), ladder()::words);
    }

    @Test
    void anEditWorksThemOutAnew() {
        fixture.press('o');
        Object before = fixture.editor().live().shown().orElseThrow().reasons().orElseThrow();
        fixture.press('f');
        fixture.enter();
        fixture.waitForPlan();
        fixture.robot().waitFor("other reasons", () -> fixture.editor().live().shown()
                .flatMap(shown -> shown.reasons()).filter(reasons -> reasons != before).isPresent());
        fixture.robot().keys(SWT.MOD1, 'z');
        fixture.robot().waitFor("the former reasons", () -> !fixture.editor().live().stale() && fixture.editor().live()
                .shown().flatMap(shown -> shown.reasons()).filter(before::equals).isPresent());
        assertTrue(ladder().words().contains("It changes first with"), ladder()::words);
    }
}
