/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.speed;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.samples.LargeLibrary;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetColumns;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Projects;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A library of 20,000 devices is opened, scrolled, filtered, sorted and edited; prints how long each took. */
class LibrarySpeed {

    private static final int DEVICES = Integer.getInteger("ferrule.speed.devices", 20_000);
    private static final int FEW_DEVICES = 40;
    private static final int PAGES = 200;
    private static final int EDITS = 10;
    private static final int AFTERWARDS_MS = 500;

    private final Robot robot = new Robot();
    private final Display display = Display.getCurrent();
    private IProject project;
    private IFile few;
    private IFile file;
    private DocumentEditor editor;
    private boolean painted;

    @BeforeEach
    void write() throws CoreException {
        project = Projects.create("Large");
        few = write("few.devices.json", FEW_DEVICES);
        file = write("large.devices.json", DEVICES);
        robot.waitForJobs();
    }

    private IFile write(String name, int devices) throws CoreException {
        byte[] content = new JsonDocuments().write(LargeLibrary.of(devices));
        say(name, String.format(Locale.ROOT, "%.1f MB, %d devices", content.length / 1e6, devices));
        return Projects.write(project, name, new String(content, StandardCharsets.UTF_8));
    }

    @AfterEach
    void close() throws CoreException {
        EditorFixture.page().closeAllEditors(false);
        robot.waitForJobs();
        Projects.delete(project);
    }

    private static void say(String what, String result) {
        System.out.println("speed: " + what + ": " + result);
    }

    @Test
    void opensScrollsFiltersAndEdits() throws CoreException {
        say("machine", Runtime.getRuntime().availableProcessors() + " processors, load "
                + ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage() + ", Java "
                + System.getProperty("java.version"));
        byte[] content = file.readAllBytes();
        say("read alone", once(() -> new JsonDocuments().read(content, file.getName())));
        say("read alone again", once(() -> new JsonDocuments().read(content, file.getName())));
        sayWithPauses("few devices opened, the first library of all", () -> open(few));
        sayWithPauses("open, until all is painted", () -> open(file));
        robot.waitForJobs();
        say("heap after opening", heap());
        EditorFixture.page().closeAllEditors(false);
        robot.settle();
        sayWithPauses("open again, until all is painted", () -> open(file));
        robot.waitForJobs();
        new ScreenPicture().take("speed-library");
        assertTrue(table().isVisible());
        scroll();
        filter();
        sort();
        select();
        edit();
        say("heap at the end", heap());
    }

    private static String once(Runnable action) {
        Times times = new Times();
        times.take(action);
        return times.words();
    }

    /** Tells too how long the display gives no answer meanwhile, and just after. */
    private void sayWithPauses(String what, Runnable action) {
        try (Pulse pulse = new Pulse(display)) {
            String words = once(action);
            robot.pause(AFTERWARDS_MS);
            say(what, words + "; longest time without an answer to the user " + pulse.words());
        }
    }

    /** From the request until the first paint event of the table has been handled. */
    private void open(IFile opened) {
        painted = false;
        Listener paint = event -> {
            if (event.widget instanceof NatTable table) {
                table.getDisplay().asyncExec(() -> painted = true);
            }
        };
        display.addFilter(SWT.Paint, paint);
        try {
            editor = (DocumentEditor) IDE.openEditor(EditorFixture.page(), opened);
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
        while (!painted) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        display.removeFilter(SWT.Paint, paint);
    }

    private Composite body() {
        return editor.getActivePageInstance().getPartControl().getParent();
    }

    private NatTable table() {
        return Widgets.first(body(), NatTable.class, table -> true).orElseThrow();
    }

    private SheetGrid grid() {
        return SheetGrid.of(table());
    }

    private SheetColumn column(String title) {
        return SheetColumns.find(grid().columns(), title).orElseThrow();
    }

    /** Each page is one that has not been seen yet. */
    private void scroll() {
        PaintTimes paints = new PaintTimes(table());
        int rows = table().getSize().y / 25;
        for (int i = 1; i <= PAGES; i++) {
            int before = paints.count();
            grid().scrollTo(column("Id"), Math.min(DEVICES - 1, i * rows));
            table().redraw();
            robot.waitFor("a painted page", () -> paints.count() > before);
        }
        say("page after page, paint event", paints.words());
    }

    private void filter() {
        Text filter = Widgets.first(body(), Text.class, text -> (text.getStyle() & SWT.SEARCH) != 0).orElseThrow();
        Times times = new Times();
        for (String typed : new String[] { "ball", "balloon 2", "balloon 2.50", "balloon 2.50 x 15", "guide-19", "" }) {
            int before = grid().listing().shown();
            times.take(() -> {
                filter.setText(typed);
                robot.waitFor("other rows", () -> grid().listing().shown() != before);
                table().update();
            });
        }
        say("filter, from typing until painted (120 ms of it wait for more)", times.words());
    }

    private void sort() {
        for (String title : new String[] { "Name", "Largest diameter" }) {
            sayWithPauses("sort by " + title.toLowerCase(Locale.ROOT), () -> {
                grid().sortBy(column(title));
                table().update();
            });
        }
        grid().sortBy(column("Largest diameter"));
        grid().sortBy(column("Largest diameter"));
    }

    private void select() {
        table().setFocus();
        sayWithPauses("all rows selected", grid()::selectAll);
        sayWithPauses("all rows copied", () -> robot.keys(SWT.CTRL, 'c'));
        grid().select(grid().listing().all().get(0).parts());
    }

    private void edit() {
        sayWithPauses("first edit of a name, until painted", () -> edit(0));
        Times times = new Times();
        for (int i = 1; i < EDITS; i++) {
            int number = i;
            times.take(() -> edit(number));
        }
        say("edit of a name, until painted", times.words());
        say("checked after the edits, within", once(robot::waitForJobs));
        editor.session().undo();
    }

    private void edit(int number) {
        DeviceLibrary library = (DeviceLibrary) editor.session().document().orElseThrow();
        editor.session().set(library.getDevices().get(number * 100), Literals.DEVICE_PARTS__NAME, "name " + number);
        robot.settle();
        table().update();
    }

    private static String heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000 + " MB of at most "
                + runtime.maxMemory() / 1_000_000 + " MB, window "
                + PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell().getSize();
    }
}
