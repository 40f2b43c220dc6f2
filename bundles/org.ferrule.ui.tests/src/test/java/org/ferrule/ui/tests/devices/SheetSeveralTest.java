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
import org.eclipse.swt.widgets.Text;
import org.ferrule.model.Device;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Changing several devices at once. */
class SheetSeveralTest {

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private List<String> models() {
        return library.library().getDevices().stream().map(Device::getModel).toList();
    }

    private void selectAll() {
        library.clickRow(library.devices(), 0);
        robot.keys(SWT.CTRL, 'a');
        robot.waitFor("all rows", () -> library.grid().selection().rows().size() == 3);
    }

    @Test
    void fieldOfAllIsChangedByOneCommand() {
        selectAll();
        Text maker = library.field("Maker");
        assertEquals("several values", maker.getMessage());
        assertEquals("", maker.getText());
        assertEquals("several values", library.field("Effective length").getMessage());
        new ScreenPicture().take("sheet-several");
        library.replace(library.field("Catalogue code"), "abc-1");
        robot.waitFor("all codes", () -> models().equals(List.of("abc-1", "abc-1", "abc-1")));
        assertEquals("Change of catalogue code of 3 entries",
                library.fixture().editor().session().nextUndo().getLabel());
        assertEquals("abc-1", library.field("Catalogue code").getText());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("no codes", () -> models().stream().allMatch(model -> model == null));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void unreadableFigureOfSeveralStaysInTheField() {
        selectAll();
        library.replace(library.field("Largest diameter"), "0.9");
        assertEquals("0.9", library.field("Largest diameter").getText());
        assertEquals("0.90 mm", library.cell(0, "Largest diameter"));
        new ScreenPicture().take("sheet-several-unreadable");
    }

    @Test
    void leavingAFieldOfDifferentValuesUntouchedChangesNothing() {
        selectAll();
        robot.click(library.field("Size"));
        robot.key(SWT.TAB);
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void uppermostCellIsFilledDownAndUndone() {
        library.clickCell(0, "Size");
        library.shiftClickCell(2, "Size");
        assertEquals(3, library.grid().selection().rows().size());
        robot.keys(SWT.CTRL, 'd');
        robot.waitFor("filled cells", () -> "2.0 x 20 mm".equals(library.cell(2, "Size"))
                && "2.0 x 20 mm".equals(library.cell(1, "Size")));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former sizes", () -> "6 Fr".equals(library.cell(2, "Size"))
                && "2.5 x 20 mm".equals(library.cell(1, "Size")));
    }

    @Test
    void idsAreNeverFilledDown() {
        library.clickCell(0, "Id");
        library.shiftClickCell(1, "Id");
        robot.keys(SWT.CTRL, 'd');
        robot.waitFor("a reason", () -> library.grid().note().contains("left as is"));
        assertEquals("ost-2.5", library.cell(1, "Id"));
        assertNull(library.fixture().editor().session().nextUndo());
    }
}
