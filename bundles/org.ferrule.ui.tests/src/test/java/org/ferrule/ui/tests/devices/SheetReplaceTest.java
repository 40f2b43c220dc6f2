/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Finding and replacing in all devices. */
class SheetReplaceTest {

    /** The guide claims to take several sizes. */
    private static final String SAMPLE = Libraries.SAMPLE.replace("""
                  "lumens": [
            """, """
                  "claims": [
                    {
                      "type": "compatible",
                      "sizes": [
                        "1.5 x 12 mm",
                        "2.0 x 30 mm",
                        "2.5 x 30 mm"
                      ]
                    }
                  ],
                  "lumens": [
            """);

    private LibraryRobot library;
    private Robot robot;
    private DialogRobot dialog;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(SAMPLE);
        robot = library.robot();
        dialog = new DialogRobot(robot);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private void type(Shell shell, String label, String text) {
        Text field = Widgets.labelled(shell, label, Text.class);
        field.setFocus();
        robot.waitFor("the focus on " + label, field::isFocusControl);
        robot.type(text);
    }

    private static Table hits(Shell shell) {
        return Widgets.first(shell, Table.class, table -> true).orElseThrow();
    }

    private void openDialog() {
        library.clickCell(0, "Size");
        robot.keys(SWT.CTRL, 'f');
    }

    @Test
    void hitsAreShownBeforeAndAfterAndOneCanBeLeftOut() {
        dialog.expect("Find and replace", shell -> {
            type(shell, "Find", "20 mm");
            type(shell, "Replace with", "15 mm");
            robot.waitFor("two hits", () -> hits(shell).getItemCount() == 2);
            TableItem first = hits(shell).getItem(0);
            assertEquals("2.0 x 20 mm", first.getText(2));
            assertEquals("2.0 x 15 mm", first.getText(3));
            assertTrue(first.getChecked());
            new ScreenPicture().take("sheet-replace");
            hits(shell).setFocus();
            hits(shell).setSelection(0);
            robot.type(" ");
            robot.waitFor("an unticked hit", () -> !hits(shell).getItem(0).getChecked());
            dialog.press(shell, "Replace");
        });
        openDialog();
        dialog.await();
        robot.waitFor("the replaced size", () -> "2.5 x 15 mm".equals(library.cell(1, "Size")));
        assertEquals("2.0 x 20 mm", library.cell(0, "Size"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former size", () -> "2.5 x 20 mm".equals(library.cell(1, "Size")));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void figuresThatCouldNotBeReadAreNeverReplaced() {
        dialog.expect("Find and replace", shell -> {
            type(shell, "Find", "2.06 mm");
            type(shell, "Replace with", "2.06");
            robot.waitFor("a hit", () -> hits(shell).getItemCount() == 1);
            assertTrue(hits(shell).getItem(0).getText(4).startsWith("Cannot be read"));
            assertFalse(hits(shell).getItem(0).getChecked());
            assertFalse(Widgets.button(shell, "Replace").isEnabled());
            new ScreenPicture().take("sheet-replace-unreadable");
            dialog.press(shell, "Cancel");
        });
        openDialog();
        dialog.await();
        assertEquals("2.06 mm", library.cell(2, "Largest diameter"));
    }

    private List<String> sizes() {
        return library.device("hol-6").getClaims().get(0).getSizes();
    }

    @Test
    void entriesOfAListAreReplacedOneByOneAndEmptyOnesGo() {
        dialog.expect("Find and replace", shell -> {
            type(shell, "Find", "\\d.\\d x 30 mm");
            Button pattern = Widgets.button(shell, "Regular expression");
            pattern.setFocus();
            robot.type(" ");
            robot.waitFor("two hits", () -> hits(shell).getItemCount() == 2);
            assertTrue(hits(shell).getItem(0).getText(1).endsWith("Sizes of partner, entry 2"),
                    hits(shell).getItem(0).getText(1));
            new ScreenPicture().take("sheet-replace-list");
            dialog.press(shell, "Replace");
        });
        List<String> before = List.copyOf(sizes());
        openDialog();
        dialog.await();
        robot.waitFor("one size", () -> sizes().equals(List.of("1.5 x 12 mm")));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former sizes", () -> sizes().equals(before));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void onlyOneEntryOfAListChanges() {
        dialog.expect("Find and replace", shell -> {
            type(shell, "Find", "2.0 x 30");
            type(shell, "Replace with", "2.0 x 25");
            robot.waitFor("a hit", () -> hits(shell).getItemCount() == 1);
            dialog.press(shell, "Replace");
        });
        openDialog();
        dialog.await();
        robot.waitFor("another size",
                () -> sizes().equals(List.of("1.5 x 12 mm", "2.0 x 25 mm", "2.5 x 30 mm")));
    }
}
