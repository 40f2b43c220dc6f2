/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** Typing into the cells of the table. */
class SheetEditTest {

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

    private Text typing() {
        return Widgets.first(library.devices(), Text.class, text -> true)
                .orElseThrow(() -> new AssertionError("no cell is open"));
    }

    private boolean isTyping() {
        return Widgets.first(library.devices(), Text.class, text -> true).isPresent();
    }

    private void openCell(int line, String column) {
        library.clickCell(line, column);
        robot.key(SWT.F2);
        robot.waitFor("an open cell", this::isTyping);
    }

    private void undo() {
        robot.keys(SWT.CTRL, 'z');
    }

    @Test
    void typingReplacesTheTextAndOneUndoBringsItBack() {
        library.clickCell(2, "Size");
        robot.type("7 fr");
        assertEquals("7 fr", typing().getText());
        robot.key(SWT.CR);
        robot.waitFor("the new size", () -> "7 fr".equals(library.device("hol-6").getSize()));
        assertFalse(isTyping());
        assertEquals("Change of size", library.fixture().editor().session().nextUndo().getLabel());
        undo();
        robot.waitFor("the former size", () -> "6 Fr".equals(library.cell(2, "Size")));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void figureKeepsItsUnitAndSaysWhatItAmountsTo() {
        openCell(2, "Main lumen");
        robot.keys(SWT.CTRL, 'a');
        robot.type("0.071 in min");
        robot.waitFor("the meaning", () -> library.grid().note().contains("mm"));
        new ScreenPicture().take("sheet-typing");
        robot.key(SWT.CR);
        robot.waitFor("the figure", () -> library.cell(2, "Main lumen").equals("0.071 in min"));
        assertEquals("0.071 in min",
                library.device("hol-6").getLumens().get(0).getSections().get(0).getId().text());
        undo();
        robot.waitFor("the former figure", () -> library.cell(2, "Main lumen").equals("0.070 in min"));
    }

    @Test
    void unreadableTextStaysInTheCellAndOutOfTheLibrary() {
        openCell(2, "Effective length");
        robot.keys(SWT.CTRL, 'a');
        robot.type("90");
        robot.key(SWT.CR);
        assertTrue(isTyping(), "Enter must not leave a cell that cannot be read");
        assertTrue(library.grid().note().contains("expected"), library.grid().note());
        new ScreenPicture().take("sheet-unreadable");
        robot.key(SWT.TAB);
        robot.waitFor("a closed cell", () -> !isTyping());
        assertEquals("100 cm", library.device("hol-6").getEffectiveLength().text());
        assertEquals(1, library.grid().unreadable());
        openCell(2, "Effective length");
        assertEquals("90", typing().getText());
        robot.key(SWT.ESC);
        robot.waitFor("nothing left", () -> library.grid().unreadable() == 0);
        assertEquals("100 cm", library.cell(2, "Effective length"));
    }

    @Test
    void escapeGivesUpWhatWasTyped() {
        openCell(2, "Name");
        robot.type("x");
        robot.key(SWT.ESC);
        robot.waitFor("a closed cell", () -> !isTyping());
        assertEquals("Holmgard guide 6 Fr", library.cell(2, "Name"));
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void tabTakesOverAndGoesToTheNextCell() {
        openCell(2, "Name");
        robot.keys(SWT.CTRL, 'a');
        robot.type("guide");
        robot.key(SWT.TAB);
        robot.waitFor("the name", () -> "guide".equals(library.device("hol-6").getName()));
        assertEquals("Kind", library.grid().selection().column().orElseThrow().title());
    }

    @Test
    void inheritedFigureIsOverriddenForOneSizeAndInheritedAgain() {
        assertTrue(library.column("Effective length").inherited(library.grid().listing().all().get(0)));
        openCell(0, "Effective length");
        assertEquals("", typing().getText());
        assertEquals("142 cm", typing().getMessage());
        robot.type("140 cm");
        robot.key(SWT.CR);
        Device device = library.device("ost-2.0");
        robot.waitFor("its own length", () -> device.getEffectiveLength() != null);
        assertEquals("142 cm", library.library().getLines().get(0).getEffectiveLength().text());
        library.clickCell(0, "Effective length");
        robot.key(SWT.DEL);
        robot.waitFor("the line's length", () -> library.cell(0, "Effective length").equals("142 cm"));
        assertNull(device.getEffectiveLength());
    }

    @Test
    void figureOfAnInheritedSectionIsOverriddenByASectionOfItsOwn() {
        openCell(0, "Entry profile");
        robot.type("0.45 mm");
        robot.key(SWT.CR);
        robot.waitFor("the figure", () -> library.cell(0, "Entry profile").equals("0.45 mm"));
        assertEquals("tip", library.device("ost-2.0").getSections().get(1).getName());
        assertEquals("0.43 mm", library.library().getLines().get(0).getSections().get(0).getOd().text());
        undo();
        robot.waitFor("the line's figure", () -> library.cell(0, "Entry profile").equals("0.43 mm"));
        assertEquals(1, library.device("ost-2.0").getSections().size());
    }

    @Test
    void kindIsTypedAsAWordOfTheList() {
        openCell(2, "Kind");
        robot.keys(SWT.CTRL, 'a');
        robot.type("guide ext");
        robot.key(SWT.CR);
        assertTrue(library.grid().note().contains("guide extension"), library.grid().note());
        robot.type("ension");
        robot.key(SWT.CR);
        robot.waitFor("the kind", () -> library.cell(2, "Kind").equals("guide extension"));
    }

    @Test
    void cellsThatFollowFromOthersSayWhyTheyAreNotTyped() {
        library.clickCell(2, "Source age");
        robot.key(SWT.F2);
        robot.waitFor("a reason", () -> library.grid().note().contains("follows from"));
        assertFalse(isTyping());
    }
}
