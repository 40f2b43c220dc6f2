/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Table;
import org.ferrule.model.Device;
import org.ferrule.ui.devices.clip.TabText;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Cells to and from a spreadsheet. */
class SheetPasteTest {

    private LibraryRobot library;
    private Robot robot;
    private DialogRobot dialog;
    private Clipboard clipboard;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
        dialog = new DialogRobot(robot);
        clipboard = new Clipboard(Display.getCurrent());
    }

    @AfterEach
    void close() throws CoreException {
        clipboard.dispose();
        library.close();
    }

    private void put(String text) {
        clipboard.setContents(new Object[] { text }, new Transfer[] { TextTransfer.getInstance() });
    }

    private String text() {
        return (String) clipboard.getContents(TextTransfer.getInstance());
    }

    private List<String> ids() {
        return library.library().getDevices().stream().map(Device::getId).toList();
    }

    @Test
    void copyHasHeadsAndUnitsAsTyped() {
        library.clickCell(1, "Size");
        library.shiftClickCell(2, "Effective length");
        robot.keys(SWT.CTRL, 'c');
        robot.waitFor("a text", () -> text() != null && text().contains("100 cm"));
        List<List<String>> rows = TabText.read(text());
        assertEquals("Size", rows.get(0).get(0));
        assertEquals(List.of("6 Fr", "", "", "2.06 mm", "2.00 mm", "0.070 in min", "100 cm"), rows.get(2));
    }

    @Test
    void pasteOverARangeIsPreviewedAndUndone() {
        put("7 Fr\t\t\t2.40 mm\n");
        library.clickCell(2, "Size");
        dialog.expect("Paste", shell -> {
            Table preview = Widgets.first(shell, Table.class, table -> true).orElseThrow();
            assertEquals(2, preview.getItemCount());
            assertEquals("6 Fr", library.device("hol-6").getSize());
            new ScreenPicture().take("sheet-paste");
            dialog.press(shell, "Paste");
        });
        robot.keys(SWT.CTRL, 'v');
        dialog.await();
        robot.waitFor("the pasted size", () -> "7 Fr".equals(library.cell(2, "Size")));
        assertEquals("2.40 mm", library.cell(2, "Largest diameter"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former size", () -> "6 Fr".equals(library.cell(2, "Size")));
        assertEquals("2.06 mm", library.cell(2, "Largest diameter"));
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void nothingIsDroppedSilently() {
        put("Id\tColour\tEffective length\nhol-6\tred\t90\n");
        library.clickCell(0, "Id");
        dialog.expect("Paste", shell -> {
            Table preview = Widgets.first(shell, Table.class, table -> true).orElseThrow();
            assertEquals(2, preview.getItemCount());
            assertFalse(Widgets.button(shell, "Paste").isEnabled());
            new ScreenPicture().take("sheet-paste-problems");
            dialog.press(shell, "Cancel");
        });
        robot.keys(SWT.CTRL, 'v');
        dialog.await();
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void rowWithoutAnIdIsShownAsAProblemAsAWhole() {
        put("Id\tSize\n\t3.0 x 20 mm\nhol-6\t7 Fr\n");
        library.clickCell(0, "Id");
        dialog.expect("Paste", shell -> {
            Table preview = Widgets.first(shell, Table.class, table -> true).orElseThrow();
            assertEquals(3, preview.getItemCount());
            dialog.tick(shell, "Leave out the 2 cells");
            dialog.press(shell, "Paste");
        });
        robot.keys(SWT.CTRL, 'v');
        dialog.await();
        robot.waitFor("the pasted size", () -> "7 Fr".equals(library.cell(2, "Size")));
        assertEquals(3, library.lines());
    }

    @Test
    void rowsWithOtherIdsBecomeNewDevices() {
        put("Id\tLine\tSize\tLargest diameter\tEffective length\n"
                + "ost-3.0\tost-balloon\t3.0 x 20 mm\t0.99 mm\t142 cm\n"
                + "ost-2.5\tost-balloon\t2.5 x 20 mm\t0.95 mm\t142 cm\n");
        library.clickCell(0, "Id");
        dialog.expect("Paste", shell -> {
            Button byId = Widgets.first(shell, Button.class, b -> b.getText().startsWith("To the rows")).orElseThrow();
            assertEquals(true, byId.getSelection());
            new ScreenPicture().take("sheet-paste-new");
            dialog.press(shell, "Paste");
        });
        robot.keys(SWT.CTRL, 'v');
        dialog.await();
        robot.waitFor("a new device", () -> ids().equals(List.of("ost-2.0", "ost-2.5", "hol-6", "ost-3.0")));
        assertEquals("0.95 mm", library.cell(1, "Largest diameter"));
        assertEquals("3.0 x 20 mm", library.device("ost-3.0").getSize());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("as before", () -> ids().equals(List.of("ost-2.0", "ost-2.5", "hol-6")));
        assertEquals("0.94 mm", library.cell(1, "Largest diameter"));
    }

    @Test
    void quotedCellsSurviveARoundTrip() {
        List<List<String>> rows = List.of(List.of("a\tb", "say \"6 Fr\"", "", "two\nlines"),
                List.of("1", "2", "3", ""));
        assertEquals(rows, TabText.read(TabText.write(rows)));
        assertEquals(List.of(List.of("5' 3\"", "\"x")), TabText.read("5' 3\"\t\"x\r\n"));
    }
}
