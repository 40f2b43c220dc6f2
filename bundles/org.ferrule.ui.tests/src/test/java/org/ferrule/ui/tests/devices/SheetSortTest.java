/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.operation.ModalContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.LargeLibrary;
import org.ferrule.ui.tests.robot.EditorFixture;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sorting many devices by a figure: all of them are looked up first, and the window answers meanwhile. */
class SheetSortTest {

    /** Lines of forty with the same diameters, of which four are the smallest; every fifth device is a guide. */
    private static final int DEVICES = 3000;
    private static final List<String> AS_WRITTEN = List.of("balloon-0", "balloon-1", "balloon-2", "balloon-3",
            "guide-4");
    private static final List<String> RISING = List.of("balloon-0", "balloon-1", "balloon-2", "balloon-3",
            "balloon-40");
    private static final String LAST = "balloon-2998";
    private static final String DIAMETER = "Nominal diameter";

    private final Display display = Display.getCurrent();
    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(
                new String(new JsonDocuments().write(LargeLibrary.of(DEVICES)), StandardCharsets.UTF_8));
        robot = library.robot();
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private List<String> firstIds() {
        return IntStream.range(0, RISING.size()).mapToObj(line -> library.cell(line, "Id")).toList();
    }

    private void sort() {
        library.clickHead(DIAMETER);
        robot.waitFor("a sorted table", this::isSorted);
    }

    private boolean isSorted() {
        return library.grid().listing().sorted().isPresent();
    }

    private String selected() {
        return library.grid().selection().rows().get(0).parts().getId();
    }

    @Test
    void smallestComesFirstAndTheKeyboardStaysInTheTable() {
        library.clickCell(0, DIAMETER);
        sort();
        assertEquals(RISING, firstIds());
        assertEquals("balloon-0", selected());
        robot.key(SWT.F2);
        robot.waitFor("an open cell", () -> Widgets.first(library.devices(), Text.class, text -> true).isPresent());
    }

    @Test
    void figureThatIsStillBeingTypedCountsAndSoDoesItsUndo() {
        library.clickCell(DEVICES - 2, DIAMETER);
        robot.type("0.1 mm");
        sort();
        assertEquals(LAST, firstIds().get(0));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former figure", () -> !"0.1 mm".equals(library.cell(0, DIAMETER)));
        for (String order : List.of("falling", "as written")) {
            assertTrue(isSorted(), order);
            library.clickHead(DIAMETER);
        }
        sort();
        assertEquals(RISING, firstIds());
    }

    /** Another window may change the document: what was looked up of the device by then is not what holds. */
    @Test
    void changeThatComesWhileFiguresAreLookedUpCounts() {
        whileLookingUp(() -> library.fixture().editor().session().set(library.device(LAST).getBalloon(),
                Literals.BALLOON__DIAMETER, Dimension.parse("0.1 mm")));
        sort();
        assertEquals(LAST, firstIds().get(0));
    }

    @Test
    void editorThatClosesMeanwhileLeavesNothingToSort() {
        whileLookingUp(() -> EditorFixture.page().closeAllEditors(false));
        library.grid().sortBy(library.column(DIAMETER));
        robot.waitFor("no editor", () -> EditorFixture.page().getEditorReferences().length == 0);
    }

    @Test
    void sortingThatTakesLongIsShownAndCanBeCancelled() {
        SlowDisplay slow = new SlowDisplay();
        whileLookingUp(slow);
        library.clickHead(DIAMETER);
        robot.waitFor("the end of the dialog", () -> slow.clicked && dialog().isEmpty());
        assertFalse(isSorted());
        assertEquals(AS_WRITTEN, firstIds());
        sort();
        assertEquals(RISING, firstIds());
    }

    /** Does something as soon as cells are looked up, which is before a dialog is shown. */
    private void whileLookingUp(Runnable action) {
        display.asyncExec(() -> {
            if (ModalContext.getModalLevel() > 0) {
                action.run();
            } else {
                whileLookingUp(action);
            }
        });
    }

    private Optional<Shell> dialog() {
        return Stream.of(display.getShells())
                .filter(shell -> shell.isVisible() && "Progress Information".equals(shell.getText())).findFirst();
    }

    /** Lets little be done between two steps, as on a slow machine, until somebody has cancelled it. */
    private final class SlowDisplay implements Runnable {

        private static final int STEP_MS = 60;
        private static final int STEP_OF_DIALOG_MS = 300;

        private boolean clicked;

        @Override
        public void run() {
            Optional<Shell> dialog = dialog();
            dialog.filter(shell -> !clicked && tellsWhatIsDone(shell)).ifPresent(this::cancel);
            rest(dialog.isPresent() ? STEP_OF_DIALOG_MS : STEP_MS);
            if (ModalContext.getModalLevel() > 0) {
                display.asyncExec(this);
            }
        }

        private void rest(int milliseconds) {
            try {
                Thread.sleep(milliseconds);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        private boolean tellsWhatIsDone(Shell dialog) {
            return Widgets.all(dialog, Label.class)
                    .anyMatch(label -> label.getText().startsWith("Looking up the figures of "));
        }

        /** Without letting the workbench work meanwhile, as the robot does: everything would be looked up by then. */
        private void cancel(Shell dialog) {
            new ScreenPicture().take("sheet-sort-cancel");
            Button button = Widgets.button(dialog, "Cancel");
            Point middle = button.toDisplay(button.getSize().x / 2, button.getSize().y / 2);
            post(SWT.MouseMove, 0, middle);
            post(SWT.MouseDown, 1, middle);
            post(SWT.MouseUp, 1, middle);
            clicked = true;
        }

        private void post(int type, int button, Point at) {
            Event event = new Event();
            event.type = type;
            event.button = button;
            event.x = at.x;
            event.y = at.y;
            assertTrue(display.post(event));
        }
    }
}
