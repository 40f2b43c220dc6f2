/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.devices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.ferrule.model.Disc;
import org.ferrule.model.ShaftSection;
import org.ferrule.ui.tests.robot.Robot;
import org.ferrule.ui.tests.robot.ScreenPicture;
import org.ferrule.ui.tests.robot.Widgets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Discs that only a line states are stated for the size, all of them, when one is changed. */
class InheritedDiscsTest {

    private LibraryRobot library;
    private Robot robot;

    @BeforeEach
    void open() throws CoreException {
        library = new LibraryRobot(Shapes.DISC_LINE);
        robot = library.robot();
        library.clickRow(library.devices(), 0);
        robot.waitFor("the drawing", () -> library.canvas().boundsOf("section:shaft").isPresent());
    }

    @AfterEach
    void close() throws CoreException {
        library.close();
    }

    private List<ShaftSection> sections() {
        return library.device("ost-2.0").getSections();
    }

    private List<String> diameters() {
        return sections().get(1).getDiscs().stream().map(disc -> disc.getDiameter().text()).toList();
    }

    private void assertUndone() {
        robot.settle();
        robot.keys(SWT.CTRL, 'z');
        robot.waitFor("the former state", () -> !library.fixture().editor().isDirty());
        assertNull(library.fixture().editor().session().nextUndo());
        assertEquals(1, sections().size());
    }

    @Test
    void allAreStatedForTheSizeWhenOneIsDragged() {
        Rectangle drawn = library.canvas().boundsOf("section:shaft").orElseThrow();
        double perMm = drawn.height / 0.9;
        Point edge = new Point(drawn.x + drawn.width - (int) (drawn.width * (1 + 1.0 / 3) / 2), drawn.y + 1);
        Point to = new Point(edge.x, edge.y + (int) (perMm * 0.1));
        robot.beginDrag(library.canvas(), edge, to, 0);
        new ScreenPicture().take("drawing-disc-inherited");
        robot.endDrag(library.canvas(), to);
        robot.waitFor("a section of the size", () -> sections().size() == 2);
        assertEquals("0.60 mm", diameters().get(0));
        assertTrue(diameters().get(1).matches("0\\.[12]\\d mm"), diameters().get(1));
        assertEquals(List.of("0 mm", "0.40 mm"),
                sections().get(1).getDiscs().stream().map(Disc::getX).map(offset -> offset.text()).toList());
        assertUndone();
    }

    @Test
    void theyStayWhenTheSizeAddsOne() {
        library.openTab("Shaft");
        robot.waitFor("sections", () -> library.sections().getItemCount() > 2);
        library.clickRow(library.sections(), 2);
        robot.waitFor("the discs", () -> discs().map(Table::getItemCount).filter(count -> count == 2).isPresent());
        Button add = Widgets.button(discs().orElseThrow().getParent(), "Add");
        robot.waitFor("the focus", () -> add.setFocus() && add.isFocusControl());
        robot.type(" ");
        robot.waitFor("a section of the size", () -> sections().size() == 2);
        assertEquals(3, sections().get(1).getDiscs().size());
        assertEquals("0.40 mm", sections().get(1).getDiscs().get(1).getDiameter().text());
        new ScreenPicture().take("disc-added");
        assertUndone();
    }

    private Optional<Table> discs() {
        return Widgets.first(library.body(), Table.class,
                table -> Stream.of(table.getColumns()).anyMatch(column -> column.getText().equals("Diameter")));
    }
}
