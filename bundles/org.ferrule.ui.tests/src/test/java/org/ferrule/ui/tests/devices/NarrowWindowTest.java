/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.ui.IWorkbenchPage;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Repaints;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The sheet of a device in a small window. */
class NarrowWindowTest {

    private LibraryRobot library;
    private Shell shell;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        shell = library.body().getShell();
        shell.setSize(1024, 700);
        library.clickRow(library.devices(), 2);
        library.robot().waitFor("the part beside", () -> Widgets.first(library.body(), CTabFolder.class, any -> true)
                .isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private CTabFolder tabs() {
        return Widgets.first(library.body(), CTabFolder.class, any -> true).orElseThrow();
    }

    /** A row of tabs that is too low for the sign which leads to the hidden ones shows none. */
    @Test
    void tabsThatHaveNoRoomAreReachedBySign() {
        assertFalse(Stream.of(tabs().getItems()).allMatch(CTabItem::isShowing), "some tab has no room");
        library.robot().waitFor("a sign for the others", () -> Widgets.all(tabs(), ToolBar.class)
                .filter(bar -> bar.getParent() == tabs()).anyMatch(bar -> isWithin(bar, tabs().getBounds().width)));
        new ScreenPicture().take("device-narrow");
    }

    private boolean isWithin(Control bar, int width) {
        Rectangle place = bar.getBounds();
        return place.y >= 0 && place.y + place.height <= tabs().getTabHeight() + 2 && place.x + place.width <= width;
    }

    /** Also beside and above the views of the perspective. */
    @Test
    void fieldsEndWithinTheForm() {
        IWorkbenchPage page = EditorFixture.page();
        page.toggleZoom(page.getReference(library.fixture().editor()));
        library.robot().settle();
        ScrolledComposite form = Widgets.first(tabs(), ScrolledComposite.class, any -> true).orElseThrow();
        library.robot().waitFor("fields", () -> Widgets.all(form, Text.class).count() > 2);
        List<Control> wide = Stream.concat(Widgets.all(form, Text.class), Widgets.all(form, Combo.class))
                .<Control>map(field -> field).filter(field -> right(field, form) > form.getClientArea().width).toList();
        new ScreenPicture().take("device-narrow-beside-views");
        assertEquals(List.of(), wide);
    }

    @Test
    void nothingIsPaintedOverAndOver() {
        IWorkbenchPage page = EditorFixture.page();
        page.toggleZoom(page.getReference(library.fixture().editor()));
        library.clickRow(library.devices(), 0);
        Combo line = Widgets.labelled(library.body(), "Line", Combo.class);
        library.robot().waitFor("a name that is cut", () -> line.getText().endsWith("\u2026"));
        assertEquals(List.of(), Repaints.whileIdle(library.robot()));
    }

    private static int right(Control field, ScrolledComposite form) {
        return field.getDisplay().map(field, form, field.getSize().x, 0).x;
    }
}
