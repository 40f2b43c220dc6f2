/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.ferrule.model.ShaftSection;
import org.ferrule.ui.tests.robot.DragAndDrop;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Parts are put into another order, several at a time: by dragging, by keys, by buttons. */
class PartOrderTest {

    private static final int SIZE_OF_LINE = 0;
    private static final int GUIDE = 2;

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE.replace("""
                          "od": "2.06 mm"
                        }
                """, """
                          "od": "2.06 mm"
                        }
                """.stripTrailing() + section("c") + section("d") + section("e") + "\n"));
        robot = library.robot();
    }

    private static String section(String name) {
        return ",\n        {\n          \"name\": \"" + name + "\"\n        }";
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private Table show(int device) {
        library.clickRow(library.devices(), device);
        library.openTab("Shaft");
        robot.waitFor("sections", () -> library.sections().getItemCount() > 2);
        // away from the device's head, whose tooltip would open while keys are pressed
        robot.moveOver(library.sections());
        return library.sections();
    }

    private List<String> names() {
        return library.device("hol-6").getSections().stream().map(ShaftSection::getName).toList();
    }

    /** Posted clicks tell no widget of the toolkit which modifiers are held, so this one is told. */
    private void select(Table table, int... rows) {
        table.setFocus();
        table.setSelection(rows);
        table.notifyListeners(SWT.Selection, new Event());
        robot.settle();
    }

    private static Point lowerHalf(Table table, int row) {
        Rectangle cell = table.getItem(row).getBounds(0);
        return new Point(cell.x + 5, cell.y + cell.height - 2);
    }

    private static Point upperHalf(Table table, int row) {
        Rectangle cell = table.getItem(row).getBounds(0);
        return new Point(cell.x + 5, cell.y + 2);
    }

    @Test
    void selectedRowsThatAreDraggedLandTogetherAndOneUndoPutsThemBack() {
        Table table = show(GUIDE);
        select(table, 0, 2);
        assertTrue(new DragAndDrop(robot, table, upperHalf(table, 2)).moveTo(table, lowerHalf(table, 3)));
        robot.waitFor("the other order", () -> names().equals(List.of("body", "d", "tip", "c", "e")));
        robot.waitFor("the same rows selected",
                () -> Arrays.equals(new int[] { 2, 3 }, library.sections().getSelectionIndices()));
        new ScreenPicture().take("sections-moved");
        assertEquals("Move of 2 objects", library.fixture().editor().session().nextUndo().getLabel());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former order", () -> names().equals(List.of("tip", "body", "c", "d", "e")));
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void rowsAreDraggedUpToo() {
        Table table = show(GUIDE);
        select(table, 2, 4);
        assertTrue(new DragAndDrop(robot, table, upperHalf(table, 4)).moveTo(table, upperHalf(table, 0)));
        robot.waitFor("the other order", () -> names().equals(List.of("c", "e", "tip", "body", "d")));
    }

    @Test
    void whatIsDroppedWhereItStandsChangesNothing() {
        Table table = show(GUIDE);
        select(table, 1, 2);
        assertTrue(new DragAndDrop(robot, table, upperHalf(table, 1)).moveTo(table, upperHalf(table, 2)));
        assertEquals(List.of("tip", "body", "c", "d", "e"), names());
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void inheritedRowsAreNotDragged() {
        Table table = show(SIZE_OF_LINE);
        select(table, 0, 1);
        assertFalse(new DragAndDrop(robot, table, upperHalf(table, 0)).moveTo(table, lowerHalf(table, 2)));
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void keysMoveAllSelectedRows() {
        Table table = show(GUIDE);
        select(table, 1, 3);
        robot.waitFor("the focus", table::isFocusControl);
        robot.keyWith(SWT.ALT, SWT.ARROW_DOWN);
        robot.waitFor("both below the last", () -> names().equals(List.of("tip", "c", "e", "body", "d")));
        robot.keyWith(SWT.ALT, SWT.ARROW_UP);
        robot.waitFor("both one place up", () -> names().equals(List.of("tip", "c", "body", "d", "e")));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("one step back", () -> names().equals(List.of("tip", "c", "e", "body", "d")));
    }
}
