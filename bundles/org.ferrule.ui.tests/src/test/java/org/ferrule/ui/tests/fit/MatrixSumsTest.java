/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Each row and column shows the sum of its verdicts, and the lines are sorted by it. */
class MatrixSumsTest {

    private static final String GUIDES = "access-and-guides.devices.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        robot.key(SWT.F5);
        robot.waitFor("the sums", () -> content().sums().shown());
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private MatrixContent content() {
        return fixture.table().content();
    }

    private int counted(int row, Verdict verdict) {
        int count = 0;
        for (int column = 0; column < content().axis(Side.INNER).size(); column++) {
            count += content().cell(row, column).in().verdict() == verdict ? 1 : 0;
        }
        return count;
    }

    private void assertSumsOfRows() {
        for (int row = 0; row < content().axis(Side.OUTER).size(); row++) {
            for (Verdict verdict : Verdict.values()) {
                assertEquals(counted(row, verdict), content().sums().of(Side.OUTER, row).of(verdict), "row " + row);
            }
        }
    }

    @Test
    void countsTheCellsOfEachLineAndFollowsAnEdit() {
        new ScreenPicture().take("matrix-sums");
        assertSumsOfRows();
        int blocked = blockedInTheGuide();
        EObject section = fixture.object(GUIDES, "devices[" + GUIDE + "]/lumens[0]/sections[0]");
        fixture.session(GUIDES).set(section, ModelPackage.Literals.LUMEN_SECTION__ID, Dimension.parse("0.4 mm"));
        robot.waitFor("more that are blocked", () -> blockedInTheGuide() > blocked);
        assertSumsOfRows();
    }

    private int blockedInTheGuide() {
        return content().sums().of(Side.OUTER, fixture.position(Side.OUTER, GUIDE)).of(Verdict.BLOCKED);
    }

    @Test
    void aClickOnASumSortsByThemAndAnotherTurnsTheOrder() {
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x - 20, cell.y + 5);
        assertSortedRows(true);
        new ScreenPicture().take("matrix-sorted-by-sums");
        robot.clickPainted(fixture.table().control(), cell.x - 20, cell.y + 5);
        assertSortedRows(false);
    }

    @Test
    void keysSortColumnsByTheirSums() {
        robot.key(SWT.F8);
        robot.waitFor("sorted columns", () -> content().sortedBySums(Side.INNER).isPresent());
        int before = Integer.MAX_VALUE;
        for (int column = 0; column < content().axis(Side.INNER).size(); column++) {
            int fits = content().sums().of(Side.INNER, column).of(Verdict.FITS);
            assertTrue(fits <= before, "column " + column + " is out of order");
            before = fits;
        }
    }

    private void assertSortedRows(boolean bestFirst) {
        assertEquals(bestFirst, content().sortedBySums(Side.OUTER).orElseThrow());
        for (int row = 1; row < content().axis(Side.OUTER).size(); row++) {
            int above = content().sums().of(Side.OUTER, row - 1).of(Verdict.FITS);
            int here = content().sums().of(Side.OUTER, row).of(Verdict.FITS);
            assertTrue(bestFirst ? above >= here : above <= here, "row " + row + " is out of order");
        }
    }
}
