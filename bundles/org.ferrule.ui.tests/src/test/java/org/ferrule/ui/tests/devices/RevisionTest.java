/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.ferrule.ui.devices.revision.RevisionView;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests the comparison of a library with other revisions of it. */
class RevisionTest {

    private static final int BODY = 1;

    private LibraryRobot library;
    private Robot robot;
    private IViewPart view;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE);
        robot = library.robot();
        edit("2.10 mm");
        IWorkbenchPage page = EditorFixture.page();
        page.toggleZoom(page.getReference(library.fixture().editor()));
        view = page.showView(RevisionView.ID);
        robot.waitFor("the differences", () -> tree() != null && tree().getItemCount() > 0);
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().hideView(view);
        library.close();
    }

    private void edit(String text) {
        library.clickRow(library.devices(), 2);
        library.openTab("Shaft");
        library.clickRow(library.sections(), BODY);
        library.replace(library.field("Outer diameter"), text);
        robot.waitFor("the change", () -> body().equals(text));
    }

    private String body() {
        return library.device("hol-6").getSections().get(BODY).getOd().text();
    }

    /** The view has no control of its own to ask for, so its tree is looked for in the window. */
    private Tree tree() {
        return Widgets.all(library.body().getShell(), Tree.class)
                .filter(tree -> tree.getColumnCount() == 4 && tree.getColumn(3).getText().equals("Difference"))
                .findFirst().orElse(null);
    }

    private Composite root() {
        return tree().getParent();
    }

    private Combo choice() {
        return Widgets.first(root(), Combo.class, combo -> true).orElseThrow();
    }

    private Stream<TreeItem> rows() {
        return Arrays.stream(tree().getItems()).flatMap(item -> Arrays.stream(item.getItems()));
    }

    private void clickFirst() {
        TreeItem row = rows().findFirst().orElseThrow();
        Rectangle cell = row.getBounds(0);
        robot.click(tree(), cell.x + 20, cell.y + cell.height / 2);
        robot.waitFor("the selection", () -> tree().getSelectionCount() == 1 && tree().getSelection()[0] == row);
    }

    private void press(String text) {
        Button button = Widgets.button(root(), text);
        button.setFocus();
        robot.waitFor("the focus", button::isFocusControl);
        robot.type(" ");
        robot.settle();
    }

    @Test
    void editIsShownBesideTheFileAsSaved() {
        assertEquals("Device hol-6  \u2013  Holmgard guide 6 Fr   (1)", tree().getItem(0).getText(0));
        TreeItem row = rows().findFirst().orElseThrow();
        assertEquals("Shaft section body \u203a Outer diameter", row.getText(0));
        assertEquals("2.06 mm", row.getText(1));
        assertEquals("2.10 mm", row.getText(2));
        assertEquals("+0.040 mm  \u00b7  +0.0016 in", row.getText(3));
        new ScreenPicture().take("revisions");
    }

    @Test
    void singleValueIsTakenOverAndUndone() {
        clickFirst();
        press("Take over");
        robot.waitFor("the former value", () -> body().equals("2.06 mm"));
        robot.waitFor("no difference", () -> tree().getItemCount() == 0);
        tree().setFocus();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the edit", () -> body().equals("2.10 mm"));
        robot.waitFor("the difference", () -> tree().getItemCount() == 1);
    }

    @Test
    void enterLeadsToTheField() {
        clickFirst();
        robot.key(SWT.CR);
        robot.waitFor("the field", () -> library.field("Outer diameter").isFocusControl());
        assertEquals("2.10 mm", library.field("Outer diameter").getText());
    }

    private void choose(int index) {
        robot.choose(choice(), index);
    }

    @Test
    void localHistoryIsCompared() {
        library.fixture().editor().setFocus();
        EditorFixture.page().activate(library.fixture().editor());
        robot.keys(SWT.CTRL, 's');
        robot.waitFor("a clean editor", () -> !library.fixture().editor().isDirty());
        robot.waitFor("no difference", () -> tree().getItemCount() == 0);
        assertTrue(choice().getItem(1).startsWith("local history"), choice().getItem(1));
        choose(1);
        robot.waitFor("the difference", () -> tree().getItemCount() == 1);
        assertEquals("2.06 mm", rows().findFirst().orElseThrow().getText(1));
    }

    @Test
    void devicesThatCameOrWentAreTold() {
        library.clickRow(library.devices(), 1);
        library.press("Delete");
        robot.waitFor("the deletion", () -> tree().getItemCount() == 2);
        TreeItem gone = tree().getItem(1).getItem(0);
        assertEquals("The whole device", gone.getText(0));
        assertEquals("only there", gone.getText(3));
        assertEquals("not there", gone.getText(2));
    }

    @Test
    void filterKeepsWhatHasAllWords() {
        Text filter = Widgets.first(root(), Text.class, text -> (text.getStyle() & SWT.SEARCH) != 0).orElseThrow();
        robot.replace(filter, "body outer");
        robot.waitFor("the word", () -> filter.getText().equals("body outer"));
        assertEquals(1, tree().getItemCount());
        robot.type("x");
        robot.waitFor("nothing", () -> tree().getItemCount() == 0);
    }
}
