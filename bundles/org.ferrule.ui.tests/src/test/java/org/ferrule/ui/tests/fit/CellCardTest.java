/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.fit.card.CellCard;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A card explains the cell under the pointer, or the selected one by a key. */
class CellCardTest {

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private CellCard card() {
        return fixture.editor().matrix().card();
    }

    private void assertExplains(AskedPair pair) {
        String text = card().text().orElseThrow();
        assertTrue(text.contains(pair.names().innerName()), text);
        assertTrue(text.contains(pair.names().outerName()), text);
        assertTrue(text.contains("Going in: ") && text.contains("Coming out: "), text);
        assertTrue(text.contains("Decides: at "), text);
    }

    @Test
    void showsByKeyForTheSelectedCellAndGoesWithTheNextKey() {
        Rectangle cell = fixture.table().boundsOf(1, 2).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        robot.key(SWT.F2);
        robot.waitFor("the card", () -> card().text().isPresent());
        robot.settle();
        new ScreenPicture().take("cell-card");
        assertExplains(fixture.table().content().pair(1, 2));
        robot.keyPainted(fixture.table().control(), SWT.ESC);
        robot.waitFor("no card", () -> card().text().isEmpty());
    }

    @Test
    void showsForTheCellUnderThePointer() {
        Rectangle cell = fixture.table().boundsOf(2, 1).orElseThrow();
        Point at = fixture.table().control().toDisplay(cell.x + 30, cell.y + 12);
        robot.moveTo(at.x - 3, at.y);
        robot.moveTo(at.x, at.y);
        robot.waitFor("the card", () -> card().text().isPresent());
        assertExplains(fixture.table().content().pair(2, 1));
    }
}
