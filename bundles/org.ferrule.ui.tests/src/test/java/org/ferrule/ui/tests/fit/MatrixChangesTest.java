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
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.ferrule.model.ModelPackage;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.matrix.MatrixContent;
import org.ferrule.ui.fit.matrix.Side;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Only what has changed since the last save, or the sign-off, is shown. */
class MatrixChangesTest {

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
    }

    @AfterEach
    void close() throws CoreException {
        fixture.close();
    }

    private MatrixContent content() {
        return fixture.table().content();
    }

    private String told() {
        return fixture.editor().matrix().changesText();
    }

    private void narrowTheGuide() {
        EObject section = fixture.object(GUIDES, "devices[" + GUIDE + "]/lumens[0]/sections[0]");
        fixture.session(GUIDES).set(section, ModelPackage.Literals.LUMEN_SECTION__ID, Dimension.parse("0.4 mm"));
    }

    private void press(int key) {
        fixture.table().control().setFocus();
        robot.settle();
        robot.key(key);
    }

    @Test
    void linesWithoutAChangeAreLeftOutUntilItIsUndone() {
        int all = content().rows().total();
        press(SWT.F6);
        robot.waitFor("words", () -> told().equals("Only what has changed since the last save: nothing has"));
        assertEquals(0, content().rows().size());
        narrowTheGuide();
        robot.waitFor("the changed row", () -> content().rows().size() == 1);
        robot.waitForJobs();
        robot.settle();
        new ScreenPicture().take("matrix-only-changes");
        assertEquals(GUIDE, content().rows().line(0).head().id());
        assertTrue(told().matches("Only what has changed since the last save: \\d+ cells"), told());
        assertEquals(content().changes().orElseThrow().count(), content().columns().size());
        fixture.session(GUIDES).undo();
        robot.waitFor("nothing changed", () -> content().rows().size() == 0);
        press(SWT.F6);
        robot.waitFor("all lines", () -> told().isEmpty() && content().rows().size() == all);
    }

    @Test
    void aSaveIsTheNextBase() throws CoreException {
        press(SWT.F6);
        narrowTheGuide();
        robot.waitFor("the changed row", () -> content().rows().size() == 1);
        fixture.session(GUIDES).save(null);
        robot.waitFor("nothing changed", () -> content().rows().size() == 0);
    }

    @Test
    void showsWhatHasChangedSinceTheSignOff() {
        fixture.editor().matrix().side().show(true);
        Composite side = fixture.editor().matrix().side().body();
        Text name = Widgets.labelled(side, "Name or initials", Text.class);
        robot.scrollTo(name);
        robot.replace(name, "ab");
        robot.key(SWT.CR);
        robot.waitFor("a sign-off", () -> fixture.editor().answers().signed().isPresent());
        fixture.editor().matrix().side().show(false);
        narrowTheGuide();
        robot.waitFor("a change", () -> fixture.editor().matrix().signedText().startsWith("NOT UP TO DATE"));
        press(SWT.F6);
        press(SWT.F6);
        robot.waitFor("the changed row", () -> told().startsWith("Only what has changed since the sign-off: ")
                && content().rows().size() == 1);
        assertEquals(GUIDE, content().axis(Side.OUTER).line(0).head().id());
    }
}
