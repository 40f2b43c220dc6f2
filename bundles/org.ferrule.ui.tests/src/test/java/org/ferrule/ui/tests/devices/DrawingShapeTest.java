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
import org.ferrule.model.Device;
import org.ferrule.model.Disc;
import org.ferrule.model.Lumen;
import org.ferrule.model.Oval;
import org.ferrule.model.ShaftSection;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Sections that are not round are edited in the drawing: both measures of ovals, discs of composed sections. */
class DrawingShapeTest {

    private static final int BALLOON = 0;
    private static final int GUIDE = 2;
    private static final int CROWN = 3;
    /** The tip's diameter and the border of tip and body come first. */
    private static final int TABS_TO_WIDTH = 2;
    /** Two diameters, two measures, two borders and an end of the balloon's shaft come first. */
    private static final int TABS_TO_LUMEN = 7;

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Shapes.SAMPLE);
        robot = library.robot();
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private PictureCanvas show(int device, String group) {
        library.clickRow(library.devices(), device);
        robot.waitFor("the drawing", () -> library.canvas().boundsOf(group).isPresent());
        return library.canvas();
    }

    private Oval oval() {
        return library.device("hol-6").getSections().get(1).getOval();
    }

    private String width() {
        return oval().getWidth().text();
    }

    private String height() {
        return oval().getHeight().text();
    }

    /** On the upper edge of what is drawn, a share of the way from its distal end, which is to the right. */
    private Point edge(String group, double share) {
        Rectangle drawn = library.canvas().boundsOf(group).orElseThrow();
        return new Point(drawn.x + drawn.width - (int) (drawn.width * share), drawn.y + 1);
    }

    private static Point by(Point point, int y) {
        return new Point(point.x, point.y + y);
    }

    private void drag(Point from, Point to, String picture) {
        robot.beginDrag(library.canvas(), from, to, 0);
        new ScreenPicture().take(picture);
        robot.endDrag(library.canvas(), to);
    }

    private void tabTo(int handle) {
        PictureCanvas canvas = library.canvas();
        canvas.setFocus();
        robot.waitFor("the focus", canvas::isFocusControl);
        for (int i = 0; i < handle; i++) {
            robot.key(SWT.TAB);
        }
    }

    private void assertUndone() {
        robot.settle();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former state", () -> !library.fixture().editor().isDirty());
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void widthIsDraggedByTheOutline() {
        show(GUIDE, "inner:body");
        Point from = edge("section:body", 0.3);
        drag(from, by(from, 4), "drawing-oval-width");
        robot.waitFor("another width", () -> !width().equals("2.06 mm max"));
        assertTrue(width().matches("(1\\.9|2\\.0)\\d mm max"), width());
        assertEquals("1.90 mm", height());
        assertEquals("Change of body: Width", library.fixture().editor().session().nextUndo().getLabel());
        assertUndone();
        assertEquals("2.06 mm max", width());
    }

    @Test
    void heightIsDraggedByTheDashedLine() {
        show(GUIDE, "inner:body");
        Point from = edge("inner:body", 0.7);
        robot.beginDrag(library.canvas(), from, by(from, 2), 0);
        assertEquals("1.90 mm", height(), "nothing changes before the mouse is let go");
        new ScreenPicture().take("drawing-oval-height");
        robot.endDrag(library.canvas(), by(from, 2));
        robot.waitFor("another height", () -> !height().equals("1.90 mm"));
        assertTrue(height().matches("1\\.[78]\\d mm"), height());
        assertEquals("2.06 mm max", width());
        assertUndone();
        assertEquals("1.90 mm", height());
    }

    /** The lumen is 0.070 in, 1.778 mm; the next figure of two decimals that leaves a wall is 1.79 mm. */
    @Test
    void heightStaysAboveTheLumen() {
        show(GUIDE, "inner:body");
        Point from = edge("inner:body", 0.7);
        drag(from, by(from, 40), "drawing-oval-lumen");
        robot.waitFor("the least height", () -> height().equals("1.79 mm"));
        assertUndone();
    }

    @Test
    void lumenStaysBelowTheHeight() {
        show(GUIDE, "inner:body");
        Rectangle lumen = library.canvas().boundsOf("lumen:guide").orElseThrow();
        Point wall = new Point(lumen.x + lumen.width - (int) (lumen.width * 0.4), lumen.y + lumen.height - 1);
        drag(wall, by(wall, 40), "drawing-lumen-oval");
        robot.waitFor("the widest lumen", () -> library.device("hol-6").getLumens().get(0).getSections().get(0)
                .getId().text().equals("0.073 in min"));
        assertUndone();
    }

    @Test
    void heightIsMovedByKeyboardUpToTheWidth() {
        show(GUIDE, "inner:body");
        tabTo(TABS_TO_WIDTH + 1);
        robot.key(SWT.ARROW_UP);
        robot.key(SWT.CR);
        robot.waitFor("a larger height", () -> height().equals("1.91 mm"));
        robot.keyWith(SWT.SHIFT, SWT.ARROW_UP);
        robot.keyWith(SWT.SHIFT, SWT.ARROW_UP);
        new ScreenPicture().take("drawing-oval-keyboard");
        robot.key(SWT.CR);
        robot.waitFor("the largest height", () -> height().equals("2.06 mm"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former height", () -> height().equals("1.91 mm"));
        assertEquals("Change of body: Height", library.fixture().editor().session().nextUndo().getLabel());
    }

    @Test
    void widthStaysAboveTheHeight() {
        show(GUIDE, "inner:body");
        tabTo(TABS_TO_WIDTH);
        robot.keyWith(SWT.SHIFT, SWT.ARROW_DOWN);
        robot.keyWith(SWT.SHIFT, SWT.ARROW_DOWN);
        robot.key(SWT.CR);
        robot.waitFor("the least width", () -> width().equals("1.90 mm max"));
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former width", () -> width().equals("2.06 mm max"));
    }

    @Test
    void escapeGivesTheDragOfAMeasureUp() {
        show(GUIDE, "inner:body");
        Point from = edge("inner:body", 0.7);
        robot.beginDrag(library.canvas(), from, by(from, 3), 0);
        robot.key(SWT.ESC);
        robot.endDrag(library.canvas(), by(from, 3));
        assertEquals("1.90 mm", height());
        assertNull(library.fixture().editor().session().nextUndo());
    }

    @Test
    void inheritedOvalIsStatedWholeForTheSize() {
        show(BALLOON, "inner:shaft");
        Point from = edge("inner:shaft", 0.7);
        drag(from, by(from, 4), "drawing-oval-inherited");
        Device device = library.device("ost-2.0");
        robot.waitFor("a section of the size", () -> device.getSections().size() == 2);
        ShaftSection own = device.getSections().get(1);
        assertEquals("0.86 mm", own.getOval().getWidth().text());
        assertTrue(own.getOval().getHeight().text().matches("0\\.[56]\\d mm"), own.getOval().getHeight().text());
        assertUndone();
        assertEquals(1, device.getSections().size());
    }

    /** Both sections of the lumen are overridden in one lumen of the size. */
    @Test
    void borderOfAnInheritedLumenIsStatedInOneLumen() {
        show(BALLOON, "lumen:wire");
        tabTo(TABS_TO_LUMEN);
        robot.key(SWT.ARROW_RIGHT);
        robot.key(SWT.CR);
        Device device = library.device("ost-2.0");
        robot.waitFor("a lumen of the size", () -> !device.getLumens().isEmpty());
        assertEquals(1, device.getLumens().size());
        Lumen own = device.getLumens().get(0);
        assertEquals("701 mm", own.getSections().get(0).getTo().text());
        assertEquals("701 mm", own.getSections().get(1).getFrom().text());
        assertUndone();
        assertTrue(device.getLumens().isEmpty());
    }

    private Disc disc(int index) {
        return library.device("crown").getSections().get(0).getDiscs().get(index);
    }

    @Test
    void discIsMovedAndMadeLargerByItsHandles() {
        show(CROWN, "inner:crown");
        Rectangle drawn = library.canvas().boundsOf("section:crown").orElseThrow();
        double perMm = drawn.height / 1.3;
        Point edge = new Point(drawn.x + drawn.width - (int) (drawn.width * (1 + 1.0 / 3) / 2), drawn.y + 1);
        drag(edge, by(edge, (int) (perMm * 0.1)), "drawing-disc-diameter");
        robot.waitFor("another diameter", () -> !disc(1).getDiameter().text().equals("0.80 mm"));
        assertTrue(disc(1).getDiameter().text().matches("0\\.(5|6)\\d mm"), disc(1).getDiameter().text());
        assertUndone();
        robot.waitFor("the former drawing",
                () -> library.canvas().boundsOf("section:crown").filter(drawn::equals).isPresent());
        Point centre = new Point(drawn.x + drawn.width - (int) (drawn.width * (1 + 2.0 / 3) / 2),
                drawn.y + (int) (perMm * 0.4));
        drag(centre, by(centre, (int) (perMm * 0.2)), "drawing-disc-offset");
        robot.waitFor("another place", () -> !disc(1).getX().text().equals("0.40 mm"));
        assertTrue(disc(1).getX().text().matches("0\\.(1|2)\\d mm"), disc(1).getX().text());
        assertEquals("Change of crown: Disc 2: Offset across",
                library.fixture().editor().session().nextUndo().getLabel());
        assertUndone();
    }
}
