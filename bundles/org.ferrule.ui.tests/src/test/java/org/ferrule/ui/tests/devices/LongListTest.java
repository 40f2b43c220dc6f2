/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Text;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.samples.LargeLibrary;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A field whose list has many entries holds the chosen one alone until somebody goes there. */
class LongListTest {

    private static final int LINES = 60;
    private static final int IN_A_LINE = 40;

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(new String(new JsonDocuments().write(LargeLibrary.of(LINES * IN_A_LINE)),
                StandardCharsets.UTF_8));
        robot = library.robot();
        library.clickRow(library.devices(), IN_A_LINE);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private Combo lines() {
        return Widgets.labelled(library.body(), "Line", Combo.class);
    }

    private String line() {
        return library.device("balloon-" + IN_A_LINE).getLine();
    }

    @Test
    void theChosenEntryIsShownWithoutTheOthers() {
        robot.waitFor("the line", () -> lines().getText().contains("Balloon line 1"));
        assertEquals(1, lines().getItemCount());
    }

    @Test
    void goingThereByKeysBringsTheOthers() {
        assertEquals("line-1", line());
        robot.waitFor("the line", () -> lines().getText().contains("Balloon line 1"));
        Text id = library.field("Id");
        robot.clickUntil("the field above", id, id::isFocusControl);
        robot.key(SWT.TAB);
        robot.waitFor("all entries", () -> lines().getItemCount() == LINES + 1);
        robot.key(SWT.ARROW_DOWN);
        robot.waitFor("the next line", () -> "line-2".equals(line()));
        assertEquals(LINES + 1, lines().getItemCount());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former line", () -> "line-1".equals(line()));
        robot.waitFor("its words", () -> lines().getText().contains("Balloon line 1"));
    }

    @Test
    void aClickBringsTheOthersAndChoosesNone() {
        robot.clickUntil("all entries", lines(), () -> lines().getItemCount() == LINES + 1);
        robot.key(SWT.ESC);
        assertTrue(lines().getText().contains("Balloon line 1"), lines()::getText);
        assertEquals("line-1", line());
    }
}
