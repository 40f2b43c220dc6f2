/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.ferrule.ui.devices.sheet.SheetLine;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Which rows and columns the table shows. */
class SheetChoiceTest {

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

    /** Opens the menu of a button by the keyboard and takes its entry so many steps down. */
    private void choose(String button, int steps) {
        Button opener = Widgets.first(library.body(), Button.class, b -> b.getText().startsWith(button)).orElseThrow();
        opener.setFocus();
        robot.waitFor("the focus on " + button, opener::isFocusControl);
        robot.type(" ");
        robot.pause(300);
        for (int i = 0; i < steps; i++) {
            robot.key(SWT.ARROW_DOWN);
        }
        new ScreenPicture().take("sheet-menu-" + button.toLowerCase());
        robot.key(SWT.CR);
        robot.pause(200);
    }

    @Test
    void groupsFoldAndUnfold() {
        choose("Group", 3);
        robot.waitFor("two heads", () -> library.lines() == 5);
        new ScreenPicture().take("sheet-groups");
        assertEquals("Holmgard Guides", head(0));
        library.clickCell(2, "Id");
        robot.keyPainted(library.devices(), ' ');
        robot.waitFor("folded rows", () -> library.lines() == 3);
        new ScreenPicture().take("sheet-folded");
    }

    private String head(int line) {
        return ((SheetLine.Head) library.grid().listing().lines().get(line)).value();
    }

    @Test
    void onlySomeKindsAreShown() {
        choose("Kind", 3);
        robot.waitFor("one kind", () -> library.lines() == 1 || library.lines() == 2);
        assertEquals("guide catheter", library.cell(0, "Kind"));
    }

    @Test
    void onlyThoseWithProblemsAreShown() {
        robot.waitForJobs();
        int problems = (int) library.grid().listing().all().stream()
                .filter(row -> !library.column("Problems").text(row).isEmpty()).count();
        library.press("With problems");
        robot.waitFor("those with problems", () -> library.lines() == problems);
    }

    @Test
    void columnIsMovedByTheKeyboardAndStaysThere() throws CoreException {
        library.clickCell(0, "Name");
        choose("Columns", 2);
        robot.waitFor("a moved column", () -> "Name".equals(first()));
        library.fixture().editor().getSite().getPage().closeAllEditors(false);
        library.fixture().open();
        assertEquals("Name", first());
        library.grid().shownColumns().reset();
        assertEquals("Id", first());
    }

    private String first() {
        return library.grid().selection().shownColumns().get(0).title();
    }

    @Test
    void hiddenColumnStaysHiddenWhenTheEditorIsOpenedAgain() throws CoreException {
        choose("Columns", 5);
        robot.waitFor("a hidden column", () -> !library.grid().shownColumns().isShown(library.column("Name")));
        library.fixture().editor().getSite().getPage().closeAllEditors(false);
        library.fixture().open();
        assertFalse(library.grid().shownColumns().isShown(library.column("Name")));
        library.grid().shownColumns().reset();
        assertTrue(library.grid().shownColumns().isShown(library.column("Name")));
    }
}
