/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.model.Lumen;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Openings and borders of lumens are moved in the drawing, by mouse and by keyboard. */
class DrawingLumenTest {

    private static final int GUIDE = 2;
    /** Four handles of the shaft come first: two diameters and two ends. */
    private static final int TABS_TO_PORT = 4;
    private static final String SAMPLE = Libraries.SAMPLE.replace("""
                      "use": "working",
                      "sections": [
                        {
                          "id": "0.070 in min"
                        }
                      ]
            """, """
                      "use": "working",
                      "proximalAt": "40 cm",
                      "opens": "side port",
                      "sections": [
                        {
                          "name": "wide",
                          "from": "0 mm",
                          "to": "100 mm",
                          "id": "0.070 in min"
                        },
                        {
                          "name": "narrow",
                          "from": "100 mm",
                          "to": "400 mm",
                          "id": "0.060 in min"
                        }
                      ]
            """);

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(SAMPLE);
        robot = library.robot();
        library.clickRow(library.devices(), GUIDE);
        robot.waitFor("the lumen", () -> library.canvas().boundsOf("lumen:guide").isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private Lumen lumen() {
        return library.device("hol-6").getLumens().get(0);
    }

    private String port() {
        return lumen().getProximalAt().text();
    }

    private String wideTo() {
        return lumen().getSections().get(0).getTo().text();
    }

    private String narrowFrom() {
        return lumen().getSections().get(1).getFrom().text();
    }

    /** At the proximal end of the lumen, on its lower wall: to the left, since the tip is drawn to the right. */
    private Point portHandle() {
        Rectangle drawn = library.canvas().boundsOf("lumen:guide").orElseThrow();
        return new Point(drawn.x + 1, drawn.y + drawn.height - 1);
    }

    private void tabTo(int handle) {
        PictureCanvas canvas = library.canvas();
        canvas.setFocus();
        robot.waitFor("the focus", canvas::isFocusControl);
        for (int i = 0; i < handle; i++) {
            robot.key(SWT.TAB);
        }
    }

    private boolean isAsBefore() {
        return port().equals("40 cm") && wideTo().equals("100 mm") && narrowFrom().equals("100 mm");
    }

    @Test
    void portIsDraggedAndUndoPutsItBack() {
        Point from = portHandle();
        Point to = new Point(from.x - 30, from.y);
        robot.beginDrag(library.canvas(), from, to, 0);
        new ScreenPicture().take("drawing-drag-port");
        assertEquals("40 cm", port(), "nothing changes before the mouse is let go");
        robot.endDrag(library.canvas(), to);
        robot.waitFor("another port", () -> !port().equals("40 cm"));
        assertTrue(port().matches("\\d+ cm"), port());
        assertTrue(lumen().getProximalAt().label().mm() > 400, port());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former port", this::isAsBefore);
    }

    @Test
    void escapeLeavesThePortWhereItWas() {
        Point from = portHandle();
        Point to = new Point(from.x - 30, from.y);
        robot.beginDrag(library.canvas(), from, to, 0);
        robot.key(SWT.ESC);
        robot.endDrag(library.canvas(), to);
        assertTrue(isAsBefore(), port());
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void portIsMovedByKeyboard() {
        tabTo(TABS_TO_PORT);
        robot.key(SWT.ARROW_LEFT);
        robot.key(SWT.CR);
        robot.waitFor("a port farther from the tip", () -> port().equals("41 cm"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former port", this::isAsBefore);
    }

    @Test
    void borderOfTwoSectionsCountsFromTheEntry() {
        tabTo(TABS_TO_PORT + 1);
        robot.key(SWT.ARROW_RIGHT);
        robot.key(SWT.ARROW_RIGHT);
        new ScreenPicture().take("drawing-lumen-border");
        assertTrue(isAsBefore(), "nothing changes before Enter");
        robot.key(SWT.CR);
        robot.waitFor("another border", () -> wideTo().equals("102 mm"));
        assertEquals("102 mm", narrowFrom());
        assertEquals("Change of guide: border of wide and narrow",
                library.fixture().editor().session().nextUndo().getLabel());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former border", this::isAsBefore);
    }

    @Test
    void portStaysOutsideOfItsSections() {
        tabTo(TABS_TO_PORT);
        robot.key(SWT.ARROW_LEFT);
        for (int i = 0; i < 5; i++) {
            robot.keyWith(SWT.SHIFT, SWT.ARROW_RIGHT);
        }
        robot.key(SWT.CR);
        robot.settle();
        assertTrue(isAsBefore(), port());
        assertNull(library.fixture().editor().session().nextUndo());
    }
}
