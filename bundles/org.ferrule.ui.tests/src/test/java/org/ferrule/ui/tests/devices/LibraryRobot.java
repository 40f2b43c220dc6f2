/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import java.util.Arrays;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetColumns;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.Widgets;

/** Does in the editor of a library what a user does. */
final class LibraryRobot implements AutoCloseable {

    static final int PAGE_LINES = 1;

    /** Longer than the time within which two clicks are a double click. */
    private static final int PAUSE_BETWEEN_CLICKS_MS = 700;

    private final EditorFixture fixture;
    private final Robot robot;

    LibraryRobot(String content) throws CoreException {
        fixture = new EditorFixture(Libraries.FILE, content);
        robot = fixture.robot();
        maximize();
    }

    private void maximize() {
        IWorkbenchPage page = EditorFixture.page();
        if (page.getPartState(page.getReference(fixture.editor())) != IWorkbenchPage.STATE_MAXIMIZED) {
            page.toggleZoom(page.getReference(fixture.editor()));
        }
        robot.settle();
    }

    EditorFixture fixture() {
        return fixture;
    }

    Robot robot() {
        return robot;
    }

    Composite body() {
        return fixture.body();
    }

    DeviceLibrary library() {
        return (DeviceLibrary) fixture.editor().session().document().orElseThrow();
    }

    Device device(String id) {
        return library().getDevices().stream().filter(device -> id.equals(device.getId())).findFirst().orElseThrow();
    }

    Text filter() {
        return Widgets.first(body(), Text.class, text -> (text.getStyle() & SWT.SEARCH) != 0).orElseThrow();
    }

    NatTable devices() {
        return Widgets.first(body(), NatTable.class, table -> true).orElseThrow();
    }

    SheetGrid grid() {
        return SheetGrid.of(devices());
    }

    /** How many lines the table of devices has, heads of groups counted. */
    int lines() {
        return grid().listing().lines().size();
    }

    /** What stands in a cell of the table of devices. */
    String cell(int line, String column) {
        return grid().listing().lines().get(line).row().map(column(column)::text).orElse("");
    }

    SheetColumn column(String title) {
        return SheetColumns.find(grid().columns(), title).orElseThrow();
    }

    /** Clicks on a cell of the table of devices, so that it is selected alone. */
    void clickCell(int line, String column) {
        robot.settle();
        robot.waitFor("the cell in sight", () -> {
            grid().scrollTo(column(column), line);
            return grid().bounds(column(column), line).isPresent();
        });
        Rectangle cell = grid().bounds(column(column), line).orElseThrow();
        robot.clickPainted(devices(), cell.x + Math.min(20, cell.width / 2), cell.y + cell.height / 2);
        leave();
    }

    /** Moves the pointer to where nothing has a tooltip: one that comes up takes the keyboard where no window manager is. */
    private void leave() {
        Shell shell = body().getShell();
        Point corner = shell.toDisplay(2, shell.getClientArea().height - 2);
        robot.moveTo(corner.x, corner.y);
    }

    /** Clicks on a cell while Shift is held, so that all cells from the selected one on are selected. */
    void shiftClickCell(int line, String column) {
        grid().scrollTo(column(column), line);
        Rectangle cell = grid().bounds(column(column), line).orElseThrow();
        Event event = new Event();
        event.button = 1;
        event.count = 1;
        event.stateMask = SWT.SHIFT;
        event.x = cell.x + cell.width / 2;
        event.y = cell.y + cell.height / 2;
        devices().notifyListeners(SWT.MouseDown, event);
        devices().notifyListeners(SWT.MouseUp, event);
        robot.settle();
    }

    /** Clicks on the head of a row of the table of devices, so that the whole row is selected. */
    void clickRow(NatTable table, int line) {
        robot.settle();
        grid().scrollTo(grid().selection().shownColumns().get(0), line);
        Rectangle head = grid().headBounds(line).orElseThrow();
        robot.clickPainted(table, head.x + head.width / 2, head.y + head.height / 2);
        leave();
    }

    /** Clicks on the head of a column of the table of devices. */
    void clickHead(String column) {
        grid().scrollTo(column(column), 0);
        Rectangle cell = grid().bounds(column(column), 0).orElseThrow();
        robot.clickPainted(devices(), cell.x + cell.width / 2, devices().getRowHeightByPosition(0) / 2);
        leave();
        robot.pause(PAUSE_BETWEEN_CLICKS_MS);
    }

    Table sections() {
        return Widgets.first(body(), Table.class, table -> table.getColumnCount() > 3
                && table.getColumn(3).getText().equals("Outer diameter")).orElseThrow();
    }

    PictureCanvas canvas() {
        return Widgets.first(body(), PictureCanvas.class, canvas -> true).orElseThrow();
    }

    Text field(String label) {
        return Widgets.labelled(body(), label, Text.class);
    }

    void clickRow(Table table, int index) {
        robot.settle();
        Rectangle cell = table.getItem(index).getBounds(0);
        robot.click(table, cell.x + cell.width / 2, cell.y + cell.height / 2);
        robot.settle();
    }

    /** Posted clicks reach no widget that the toolkit draws itself, so this one and the next tell the widget. */
    void openTab(String title) {
        CTabFolder folder = Widgets.all(body(), CTabFolder.class).filter(f -> hasTab(f, title)).findFirst()
                .orElseThrow(() -> new AssertionError("there is no tab " + title));
        int index = IntStream.range(0, folder.getItemCount())
                .filter(i -> folder.getItem(i).getText().startsWith(title)).findFirst().orElseThrow();
        folder.setSelection(index);
        folder.notifyListeners(SWT.Selection, new Event());
        robot.settle();
    }

    private static boolean hasTab(CTabFolder folder, String title) {
        return Arrays.stream(folder.getItems()).anyMatch(item -> item.getText().startsWith(title));
    }

    void clickDrawing(int x, int y) {
        Event event = new Event();
        event.button = 1;
        event.x = x;
        event.y = y;
        canvas().notifyListeners(SWT.MouseDown, event);
        robot.settle();
    }

    void replace(Text field, String text) {
        robot.replace(field, text);
        robot.key(SWT.CR);
        robot.settle();
    }

    /** By the keyboard: the toolkit takes a posted click for none where the pointer did not enter the button. */
    void press(String text) {
        Button button = Widgets.button(body(), text);
        button.setFocus();
        robot.waitFor("the focus on " + text, button::isFocusControl);
        robot.type(" ");
        robot.settle();
    }

    /** What is painted on a control now. */
    byte[] pixels(Control control) {
        robot.settle();
        control.update();
        Image image = new Image(control.getDisplay(), control.getSize().x, control.getSize().y);
        GC gc = new GC(control);
        try {
            gc.copyArea(image, 0, 0);
            return image.getImageData().data;
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    @Override
    public void close() throws CoreException {
        fixture.close();
    }
}
