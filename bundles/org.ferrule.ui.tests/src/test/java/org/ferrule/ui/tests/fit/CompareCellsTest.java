/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.answer.ComparedPairs;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Several selected cells are compared side by side in the view that explains them. */
class CompareCellsTest {

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
        click(0, 0, SWT.NONE);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private void click(int row, int column, int modifier) {
        Rectangle cell = fixture.table().boundsOf(row, column).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5, modifier);
    }

    private ComparedPairs compared() {
        return fixture.grounds().compared();
    }

    private AskedPair pair(int row, int column) {
        return fixture.table().content().pair(row, column);
    }

    @Test
    void cellsThatAreAddedByMouseStandBesideTheFirst() {
        click(2, 2, SWT.CTRL);
        click(1, 4, SWT.CTRL);
        robot.waitFor("three pairs", () -> compared().control().isVisible() && compared().shown().size() == 3);
        robot.settle();
        new ScreenPicture().take("grounds-compared");
        assertEquals(Set.of(pair(0, 0), pair(2, 2), pair(1, 4)), Set.copyOf(compared().shown()));
        List<String> heads = compared().heads();
        assertTrue(heads.get(1).contains("than the first") || heads.get(1).contains("the same as the first"),
                heads.toString());
        click(0, 0, SWT.NONE);
        robot.waitFor("one pair", () -> fixture.grounds().panel().control().isVisible());
    }

    @Test
    void keysExtendTheSelection() {
        robot.keyPainted(fixture.table().control(), SWT.ARROW_RIGHT, SWT.SHIFT);
        robot.waitFor("two pairs", () -> compared().control().isVisible() && compared().shown().size() == 2);
        robot.keyPainted(fixture.table().control(), SWT.ARROW_DOWN, SWT.SHIFT);
        robot.waitFor("four pairs", () -> compared().shown().size() == 4);
        robot.keyPainted(fixture.table().control(), SWT.ARROW_DOWN, SWT.SHIFT);
        robot.waitFor("one of many", () -> fixture.grounds().panel().control().isVisible());
    }
}
