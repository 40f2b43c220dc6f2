/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.PartInitException;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Ink;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The matrix of a demo chart: what is painted, selected, sorted, filtered and copied. */
class MatrixTest {

    private static final String CHART = "balloons-through-guides.chart.json";

    private ChartFixture fixture;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private MatrixContent content() {
        return fixture.table().content();
    }

    @Test
    void paintsTheVerdictsInTheirInk() {
        new ScreenPicture().take("matrix");
        for (int column = 0; column < 4; column++) {
            VerdictLook look = VerdictLook.of(content().cell(0, column).in());
            Ink ink = look.tone(Colours.dark() ? Scheme.DARK : Scheme.LIGHT).ink();
            Rectangle cell = fixture.table().boundsOf(0, column).orElseThrow();
            RGB color = new RGB(ink.red(), ink.green(), ink.blue());
            assertTrue(fixture.pixels(cell, color) > 20, look + " is not painted");
        }
    }

    @Test
    void groundsFollowsTheKeyboard() {
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        fixture.robot().clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        assertEquals(content().pair(0, 0), fixture.grounds().panel().shown().orElseThrow());
        fixture.robot().keyPainted(fixture.table().control(), SWT.ARROW_RIGHT);
        fixture.robot().keyPainted(fixture.table().control(), SWT.ARROW_DOWN);
        fixture.robot().settle();
        new ScreenPicture().take("grounds");
        assertEquals(content().pair(1, 1), fixture.grounds().panel().shown().orElseThrow());
    }

    @Test
    void sortsByTheHeadThatIsClicked() {
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        fixture.robot().clickPainted(fixture.table().control(), cell.x + 5, cell.y - 5);
        fixture.robot().settle();
        for (int row = 1; row < content().axis(Side.OUTER).size(); row++) {
            Verdict above = content().cell(row - 1, 0).in().verdict();
            assertTrue(above.compareTo(content().cell(row, 0).in().verdict()) <= 0,
                    "row " + row + " is out of order");
        }
    }

    @Test
    void leavesOutLinesThatTheFilterDoesNotName() {
        int all = content().axis(Side.OUTER).size();
        content().filter(Side.OUTER, "7 fr");
        fixture.table().refresh();
        fixture.robot().settle();
        new ScreenPicture().take("matrix-filtered");
        assertTrue(content().axis(Side.OUTER).size() < all);
        assertTrue(content().axis(Side.OUTER).size() > 0);
    }

    @Test
    void copiesTheSelectionWithTabs() {
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        fixture.robot().clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        fixture.robot().keys(SWT.CTRL, 'c');
        fixture.robot().settle();
        Clipboard clipboard = new Clipboard(fixture.table().control().getDisplay());
        String text = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        String[] lines = text.split("\n");
        assertEquals(2, lines.length, text);
        assertTrue(lines[0].startsWith("\t" + content().axis(Side.INNER).line(0).head().title()), text);
        assertTrue(lines[1].contains("\t" + VerdictLook.of(content().cell(0, 0).in()).word()), text);
    }
}
