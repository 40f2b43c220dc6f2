/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The conditions of a chart are edited beside its matrix, whose cells follow at once. */
class BesideTest {

    private static final String CHART = "balloons-through-guides.chart.json";

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        robot = fixture.robot();
        robot.waitForJobs();
        robot.pressUntil("the part beside", () -> press("Conditions"), () -> fixture.editor().matrix().side().isOpen());
    }

    @AfterEach
    void close() throws CoreException {
        robot.pressUntil("no part beside", () -> press("Conditions"), () -> !fixture.editor().matrix().side().isOpen());
        fixture.close();
    }

    private Composite page() {
        return fixture.editor().getActivePageInstance().getPartControl().getParent();
    }

    private void press(String text) {
        ToolItem item = Widgets.all(page(), ToolBar.class).flatMap(bar -> Stream.of(bar.getItems()))
                .filter(each -> each.getText().equals(text)).findFirst().orElseThrow();
        Rectangle bounds = item.getBounds();
        Point at = item.getParent().toDisplay(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
        robot.moveTo(at.x, at.y);
        robot.click(item.getParent(), bounds.x + bounds.width / 2, bounds.y + bounds.height / 2);
        robot.settle();
    }

    private Composite side() {
        return fixture.editor().matrix().side().body();
    }

    private Conditions conditions() {
        return fixture.editor().answers().shown().orElseThrow().chart().question().conditions();
    }

    @Test
    void theUseBeforeChangesTheCellsAndCanBeUndone() {
        new ScreenPicture().take("matrix-beside");
        Button used = Widgets.first(side(), Button.class, button -> (button.getStyle() & SWT.CHECK) != 0).orElseThrow();
        FormToolkit.ensureVisible(used);
        robot.settle();
        robot.click(used, 10, used.getSize().y / 2);
        robot.waitFor("an answer after use",
                () -> conditions().afterInflation() && !fixture.editor().answers().stale());
        new ScreenPicture().take("matrix-beside-changed");
        assertFalse(fixture.editor().answers().shown().orElseThrow().matrix().changes().isEmpty(),
                "balloons that were used before take more room");
        fixture.editor().session().undo();
        robot.waitFor("the former answer",
                () -> !conditions().afterInflation() && !fixture.editor().answers().stale());
        assertFalse(used.getSelection());
    }

    @Test
    void aReachIsTypedAndAnswered() {
        Text reach = Widgets.labelled(side(), "Reach beyond the outer device", Text.class);
        FormToolkit.ensureVisible(reach);
        robot.settle();
        robot.replace(reach, "400 mm");
        robot.key(SWT.CR);
        robot.waitFor("an answer with the reach",
                () -> fixture.editor().answers().chart().orElseThrow().getConditions().getReach() != null
                        && fixture.editor().answers().chart().orElseThrow().getConditions().getReach().toString()
                                .startsWith("400")
                        && !fixture.editor().answers().stale());
    }

    @Test
    void fieldsAndTablesGetTheWidthOfThePart() {
        int width = side().getSize().x;
        Text reach = Widgets.labelled(side(), "Reach beyond the outer device", Text.class);
        Table inside = Widgets.all(side(), Table.class).findFirst().orElseThrow();
        int columns = Stream.of(inside.getColumns()).mapToInt(TableColumn::getWidth).sum();
        assertTrue(reach.getSize().x > width / 3, () -> reach.getSize() + " in " + width);
        assertTrue(inside.getClientArea().width >= columns, () -> inside.getClientArea() + " for " + columns);
    }

    @Test
    void theMatrixStandsBelowTheBarAlsoWhereThatHasTwoRows() {
        Shell shell = page().getShell();
        Rectangle before = shell.getBounds();
        shell.setSize(1024, 700);
        robot.settle();
        int bottom = Widgets.all(page(), ToolBar.class).mapToInt(bar -> bar.toDisplay(0, bar.getSize().y).y).max()
                .orElseThrow();
        new ScreenPicture().take("matrix-narrow");
        int top = fixture.table().control().toDisplay(0, 0).y;
        shell.setBounds(before);
        robot.settle();
        assertTrue(top >= bottom, () -> "the matrix begins at " + top + ", the bar ends at " + bottom);
    }

    @Test
    void isFoldedAwayByTheSameTool() {
        int narrow = fixture.table().control().getSize().x;
        press("Conditions");
        robot.waitFor("room for the matrix", () -> fixture.table().control().getSize().x > narrow);
        assertFalse(fixture.editor().matrix().side().isOpen());
    }
}
