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
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.model.ShaftSection;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Tests that a device is edited by dragging in its drawing, and by keyboard there. */
class DrawingEditTest {

    private static final int GUIDE = 2;

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Libraries.SAMPLE.replace("2.06 mm", "2.06 mm max"));
        robot = library.robot();
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private PictureCanvas show(int device) {
        library.clickRow(library.devices(), device);
        library.openTab("Shaft");
        return library.canvas();
    }

    private Rectangle bounds(String section) {
        return library.canvas().boundsOf(section).orElseThrow();
    }

    /** Where the tip of the guide ends: to the left, since the tip is drawn to the right. */
    private Point border() {
        Rectangle tip = bounds("section:tip");
        return new Point(tip.x + 1, tip.y + tip.height / 2);
    }

    /** On the upper outline, a third of the way from the distal end. */
    private Point diameter(String section) {
        Rectangle body = bounds(section);
        return new Point(body.x + body.width - (int) (body.width * 0.3), body.y + 1);
    }

    private static Point by(Point point, int x, int y) {
        return new Point(point.x + x, point.y + y);
    }

    private ShaftSection section(int index) {
        return library.device("hol-6").getSections().get(index);
    }

    private void drag(PictureCanvas canvas, Point from, Point to, int modifiers) {
        robot.beginDrag(canvas, from, to, modifiers);
        robot.endDrag(canvas, to);
    }

    @Test
    void borderBetweenTwoSectionsIsDragged() {
        PictureCanvas canvas = show(GUIDE);
        Point to = by(border(), -40, 0);
        robot.beginDrag(canvas, border(), to, 0);
        assertEquals("50 mm", section(0).getTo().text(), "nothing changes before the mouse is let go");
        new ScreenPicture().take("drawing-drag-border");
        robot.endDrag(canvas, to);
        robot.waitFor("the end of the tip", () -> !section(0).getTo().text().equals("50 mm"));
        assertTrue(section(0).getTo().text().matches("\\d+ mm"), section(0).getTo().text());
        assertEquals(section(0).getTo().label(), section(1).getFrom().label());
        assertTrue(section(0).getTo().label().mm() > 50);
        assertEquals(section(0).getTo().text(), library.sections().getItem(0).getText(2));
        assertEquals("Change of border of tip and body", library.fixture().editor().session().nextUndo().getLabel());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former tip", () -> section(0).getTo().text().equals("50 mm"));
        assertEquals("50 mm", section(1).getFrom().text());
        assertFalse(library.fixture().editor().isDirty());
    }

    @Test
    void diameterKeepsUnitDecimalsAndMeaning() {
        PictureCanvas canvas = show(GUIDE);
        Point from = diameter("section:body");
        robot.beginDrag(canvas, from, by(from, 0, 8), 0);
        new ScreenPicture().take("drawing-drag-diameter");
        robot.endDrag(canvas, by(from, 0, 8));
        robot.waitFor("another diameter", () -> !section(1).getOd().text().equals("2.06 mm max"));
        assertTrue(section(1).getOd().text().matches("1\\.\\d\\d mm max"), section(1).getOd().text());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former diameter", () -> section(1).getOd().text().equals("2.06 mm max"));
    }

    @Test
    void controlSwitchesSnappingOff() {
        PictureCanvas canvas = show(GUIDE);
        Point from = diameter("section:body");
        Point to = by(from, 0, 9);
        drag(canvas, from, to, SWT.CTRL);
        robot.waitFor("another diameter", () -> !section(1).getOd().text().equals("2.06 mm max"));
        assertTrue(section(1).getOd().text().matches("1\\.\\d{3,4} mm max"), section(1).getOd().text());
    }

    @Test
    void escapeGivesTheDragUp() {
        PictureCanvas canvas = show(GUIDE);
        Point to = by(border(), -40, 0);
        robot.beginDrag(canvas, border(), to, 0);
        robot.key(SWT.ESC);
        robot.endDrag(canvas, to);
        assertEquals("50 mm", section(0).getTo().text());
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void lumenIsDraggedByItsWall() {
        PictureCanvas canvas = show(GUIDE);
        Rectangle lumen = bounds("lumen:guide");
        Point wall = new Point(lumen.x + lumen.width - (int) (lumen.width * 0.4), lumen.y + lumen.height - 1);
        drag(canvas, wall, by(wall, 0, -6), 0);
        robot.waitFor("another lumen", () -> !inner().equals("0.070 in min"));
        assertTrue(inner().matches("0\\.0[56]\\d in min"), inner());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former lumen", () -> inner().equals("0.070 in min"));
    }

    private String inner() {
        return library.device("hol-6").getLumens().get(0).getSections().get(0).getId().text();
    }

    @Test
    void inheritedDiameterIsOverriddenForTheSize() {
        PictureCanvas canvas = show(0);
        Point from = diameter("section:shaft");
        robot.beginDrag(canvas, from, by(from, 0, 6), 0);
        new ScreenPicture().take("drawing-drag-inherited");
        robot.endDrag(canvas, by(from, 0, 6));
        robot.waitFor("a section of the size", () -> library.device("ost-2.0").getSections().size() == 2);
        ShaftSection own = library.device("ost-2.0").getSections().get(1);
        assertEquals("shaft", own.getName());
        assertTrue(own.getOd().text().matches("0\\.[78]\\d mm"), own.getOd().text());
        assertNull(own.getTo());
        assertEquals("0.86 mm", library.library().getLines().get(0).getSections().get(2).getOd().text());
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former size", () -> library.device("ost-2.0").getSections().size() == 1);
    }

    @Test
    void handlesAreMovedByKeyboard() {
        PictureCanvas canvas = show(GUIDE);
        canvas.setFocus();
        robot.waitFor("the focus", canvas::isFocusControl);
        robot.key(SWT.TAB);
        robot.key(SWT.ARROW_LEFT);
        robot.key(SWT.ARROW_LEFT);
        new ScreenPicture().take("drawing-keyboard");
        assertEquals("50 mm", section(0).getTo().text());
        robot.key(SWT.CR);
        robot.waitFor("the border", () -> section(0).getTo().text().equals("52 mm"));
        assertEquals("52 mm", section(1).getFrom().text());
        robot.key(SWT.ARROW_LEFT);
        robot.key(SWT.ESC);
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former border", () -> section(0).getTo().text().equals("50 mm"));
        assertNull(library.fixture().editor().session().nextUndo());
    }
}
