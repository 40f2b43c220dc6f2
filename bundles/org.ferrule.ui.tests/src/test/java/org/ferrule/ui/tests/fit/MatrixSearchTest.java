/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.ferrule.ui.fit.answer.AskedPair;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The search goes to a device while its name is typed, and leaves all lines where they are. */
class MatrixSearchTest {

    private ChartFixture fixture;
    private Robot robot;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo("balloons-through-guides.chart.json");
        robot = fixture.robot();
        robot.waitForJobs();
        Rectangle cell = fixture.table().boundsOf(0, 0).orElseThrow();
        robot.clickPainted(fixture.table().control(), cell.x + 5, cell.y + 5);
        robot.keys(SWT.CTRL, 'f');
        robot.waitFor("the search", () -> field() != null && field().isFocusControl());
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private Text field() {
        Composite page = fixture.editor().getActivePageInstance().getPartControl().getParent();
        return Widgets.first(page, Text.class, text -> text.getMessage().equals("Go to device")).orElse(null);
    }

    private AskedPair selected() {
        return fixture.table().selection().pair().orElseThrow();
    }

    private String outerName() {
        return selected().question().outer().device().name();
    }

    @Test
    void goesThereWhileTypingThenOnAndBack() {
        robot.type("right curve");
        robot.waitFor("a guide with a right curve", () -> outerName().contains("right curve"));
        robot.settle();
        new ScreenPicture().take("matrix-search");
        String first = outerName();
        robot.key(SWT.CR);
        robot.waitFor("the next one", () -> !outerName().equals(first));
        Text search = field();
        robot.key(SWT.ESC);
        robot.waitFor("the matrix", () -> fixture.table().control().isFocusControl());
        assertFalse(search.isVisible());
        robot.waitFor("the one before", () -> {
            fixture.robot().keyWith(SWT.SHIFT, SWT.F3);
            return outerName().equals(first);
        });
    }

    @Test
    void findsColumnsToo() {
        String row = outerName();
        robot.type("1.50 x 20");
        robot.waitFor("a balloon", () -> selected().question().inner().device().name().contains("1.50 x 20"));
        assertEquals(row, outerName());
    }

    @Test
    void saysThatThereIsNone() {
        robot.type("zzz");
        robot.waitFor("words", () -> Widgets.first(field().getParent(), Label.class,
                label -> label.getText().equals("none")).isPresent());
    }
}
