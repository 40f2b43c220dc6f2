/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The view of grounds is about a cell of a chart that is open. */
class GroundsTest {

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
        fixture.select(fixture.table().content().axis(Side.OUTER).line(0).head().id(),
                fixture.table().content().axis(Side.INNER).line(0).head().id());
        robot.waitFor("the grounds", () -> fixture.grounds().panel().shown().isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private boolean says(String words) {
        return Widgets.first((Composite) fixture.grounds().panel().control(), StyledText.class,
                text -> text.getText().contains(words)).isPresent();
    }

    @Test
    void anotherEditorLeavesThemAndClosingTheChartEmptiesThem() throws CoreException {
        fixture.open("beside-a-buddy-wire.chart.json");
        robot.settle();
        assertTrue(fixture.grounds().panel().shown().isPresent(), "its chart is still open");
        EditorFixture.page().closeEditor(fixture.editor(), false);
        robot.settle();
        assertTrue(fixture.grounds().panel().shown().isPresent(), "another chart was closed");
        EditorFixture.page().closeAllEditors(false);
        robot.waitFor("no grounds", () -> fixture.grounds().panel().shown().isEmpty());
        assertTrue(says("Select a cell of a fit chart"));
        new ScreenPicture().take("grounds-of-nothing");
        fixture.open("balloons-through-guides.chart.json");
        assertFalse(fixture.grounds().panel().shown().isPresent(), "nothing is selected yet");
    }
}
