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
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Duplicating a device as the next size of its line. */
class SheetNextSizeTest {

    private LibraryRobot library;
    private Robot robot;
    private DialogRobot dialog;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
        dialog = new DialogRobot(robot);
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private List<String> ids() {
        return library.library().getDevices().stream().map(Device::getId).toList();
    }

    @Test
    void idAndSizeCountUpAndAnOldProfileIsNotTakenOver() {
        library.clickRow(library.devices(), 1);
        dialog.expect("Next size", shell -> {
            assertEquals("ost-3.0", Widgets.labelled(shell, "Id", Text.class).getText());
            assertEquals("3.0 x 20 mm", Widgets.labelled(shell, "Size", Text.class).getText());
            new ScreenPicture().take("sheet-next-size");
            dialog.press(shell, "Add");
        });
        library.press("Next size...");
        dialog.await();
        robot.waitFor("the next size", () -> ids().equals(List.of("ost-2.0", "ost-2.5", "ost-3.0", "hol-6")));
        Device added = library.device("ost-3.0");
        assertEquals("24 mm", added.getSections().get(0).getTo().text());
        assertNull(added.getSections().get(0).getOd());
        assertEquals("ost-balloon", added.getLine());
        robot.waitFor("its row", () -> library.grid().selection().rows().get(0).parts() == added);
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("as before", () -> ids().equals(List.of("ost-2.0", "ost-2.5", "hol-6")));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void allThatCountsUpWithTheSizeIsProposedPastTheSizesThatAreThere() throws CoreException {
        library.close();
        library = new LibraryRobot(Libraries.SIZES);
        library.clickRow(library.devices(), 2);
        dialog.expect("Next size", shell -> {
            assertEquals("ost-350-15", Widgets.labelled(shell, "Id", Text.class).getText());
            assertEquals("Osterbrook 3.50 x 15 mm", Widgets.labelled(shell, "Name", Text.class).getText());
            assertEquals("OB35015", Widgets.labelled(shell, "Catalogue code", Text.class).getText());
            assertEquals("3.50 mm", Widgets.labelled(shell, "Balloon diameter", Text.class).getText());
            assertEquals("15 mm", Widgets.labelled(shell, "Balloon length", Text.class).getText());
            new ScreenPicture().take("sheet-next-size-codes");
            dialog.press(shell, "Add");
        });
        library.press("Next size...");
        dialog.await();
        robot.waitFor("the next size", () -> ids().contains("ost-350-15"));
        assertEquals("3.50 mm", library.device("ost-350-15").getBalloon().getDiameter().text());
    }

    @Test
    void withoutAnEvidentStepNothingIsGuessed() {
        library.clickRow(library.devices(), 2);
        dialog.expect("Next size", shell -> {
            assertEquals("", Widgets.labelled(shell, "Id", Text.class).getText());
            assertEquals("", Widgets.labelled(shell, "Size", Text.class).getText());
            assertFalse(Widgets.button(shell, "Add").isEnabled());
            new ScreenPicture().take("sheet-next-size-unknown");
            dialog.press(shell, "Cancel");
        });
        library.press("Next size...");
        dialog.await();
        assertFalse(library.fixture().editor().isDirty());
    }
}
