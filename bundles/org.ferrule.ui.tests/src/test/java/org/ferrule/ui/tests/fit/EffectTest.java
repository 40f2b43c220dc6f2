/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.fit.effect.EffectPreference;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests the list of verdicts that an edit changes, before it is saved and when it is asked for. */
class EffectTest {

    private static final String CHART = "balloons-through-guides.chart.json";
    private static final String LIBRARY = "access-and-guides.devices.json";
    private static final String GUIDE = "kes-guide-6fr-right-100";
    private static final int PAUSE_MS = 200;
    private static final int LOOKS_UNTIL_KEYS_ARE_LOST = 300;

    private final List<String> reasons = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private final List<Integer> heights = new ArrayList<>();
    private ChartFixture fixture;
    private Robot robot;
    private DocumentEditor editor;
    private int dialogs;

    @BeforeEach
    void open() throws CommandException, PartInitException {
        fixture = ChartFixture.ofDemo(CHART);
        robot = fixture.robot();
        robot.waitForJobs();
        editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), fixture.file(LIBRARY));
        robot.settle();
        assertTrue(editor.reveal("devices[" + GUIDE + "]/lumens[0]/sections[0]"));
        robot.settle();
    }

    @AfterEach
    void close() throws CoreException {
        EffectPreference.show(true);
        fixture.close();
    }

    private void type(String label, String text) {
        Text field = Widgets.labelled(editor.getActivePageInstance().getPartControl().getParent(), label, Text.class);
        robot.replace(field, text);
        robot.key(SWT.CR);
        robot.waitFor("the change", editor::isDirty);
    }

    /** Presses a button of the dialog once it is there, and notes what it lists. */
    private void answer(String button) {
        Display display = Display.getCurrent();
        display.timerExec(PAUSE_MS, new Runnable() {
            private boolean asked;

            @Override
            public void run() {
                Shell shell = dialog();
                if (shell != null && !asked) {
                    asked = true;
                    note(shell);
                }
                if (shell != null) {
                    robot.click(Widgets.button(shell, button));
                }
                if (shell != null || !asked) {
                    display.timerExec(PAUSE_MS, this);
                }
            }
        });
    }

    private static Shell dialog() {
        return Stream.of(Display.getCurrent().getShells())
                .filter(shell -> shell.isVisible() && shell.getText().equals("What This Edit Changes")).findFirst()
                .orElse(null);
    }

    private void note(Shell shell) {
        dialogs++;
        heights.add(shell.getSize().y);
        new ScreenPicture().take("edit-effect-" + dialogs);
        Widgets.first(shell, Table.class, table -> true).ifPresent(table -> Arrays.stream(table.getItems())
                .forEach(item -> {
                    rows.add(IntStream.range(0, 5).mapToObj(item::getText).reduce((a, b) -> a + " | " + b).get());
                    reasons.add(item.getText(5));
                }));
        assertTrue(Widgets.all(shell, Button.class).count() >= 1);
    }

    private void save() {
        EditorFixture.page().activate(editor);
        robot.keys(SWT.CTRL, 's');
    }

    @Test
    void goingBackLeavesTheFileAsItWas() {
        type("Inner diameter", "0.020 in min");
        answer("Go back");
        save();
        robot.waitFor("the list", () -> dialogs == 1 && dialog() == null);
        robot.settle();
        assertTrue(editor.isDirty());
        assertFalse(rows.isEmpty());
        assertTrue(rows.stream().allMatch(row -> row.startsWith(CHART)), rows.toString());
        assertTrue(rows.stream().anyMatch(row -> row.toLowerCase().endsWith("blocked")), rows.toString());
        assertTrue(reasons.stream().allMatch(reason -> reason.length() > 10), reasons.toString());
    }

    @Test
    void savingAfterTheListIsAsked() {
        type("Inner diameter", "0.020 in min");
        answer("Save");
        save();
        robot.waitFor("a clean editor", () -> !editor.isDirty());
        assertEquals(1, dialogs);
    }

    @Test
    void nothingIsAskedWhereNoVerdictChanges() {
        type("Page", "17");
        save();
        robot.waitFor("a clean editor", () -> !editor.isDirty());
    }

    @Test
    void nothingIsAskedWhereTheUserDoesNotWantIt() {
        EffectPreference.show(false);
        type("Inner diameter", "0.020 in min");
        save();
        robot.waitFor("a clean editor", () -> !editor.isDirty());
    }

    /** Asks again where the keys came before the workbench took them. */
    private void askForList() {
        int before = dialogs;
        int[] looked = new int[1];
        answer("Close");
        robot.waitFor("the list", () -> {
            if (dialogs == before && looked[0]++ % LOOKS_UNTIL_KEYS_ARE_LOST == 0) {
                robot.holding(SWT.CTRL, () -> robot.keys(SWT.ALT, 'e'));
            }
            return dialogs > before && dialog() == null;
        });
    }

    @Test
    void listIsShownWhenItIsAskedForAndFollowsUndo() {
        type("Inner diameter", "0.020 in min");
        askForList();
        int listed = rows.size();
        assertTrue(listed > 0);
        EditorFixture.page().activate(editor);
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former document", () -> !editor.isDirty());
        askForList();
        assertEquals(listed, rows.size());
        assertTrue(heights.get(1) < heights.get(0) * 3 / 4, () -> "no list needs no room: " + heights);
    }
}
