/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PictureBuilderTest {

    @Test
    void penAndFillStayInForce() {
        List<Element> elements = new PictureBuilder()
                .pen(Ink.RULE, 0.5).fill(Ink.BAND).rect(1, 2, 3, 4).circle(5, 6, 7).elements();
        Style style = Style.of(Stroke.of(Ink.RULE, 0.5), Fill.of(Ink.BAND));
        assertEquals(new Rect(new Box(1, 2, 3, 4), 0, style), elements.get(0));
        assertEquals(Ellipse.circle(new Point(5, 6), 7, style), elements.get(1));
    }

    @Test
    void groupStartsWithTheStateAroundItAndLeavesItAsItWas() {
        List<Element> elements = new PictureBuilder()
                .noPen().fill(Ink.BAND)
                .group(Frame.named("cell"), g -> g.rect(0, 0, 1, 1).fill(Ink.TEXT))
                .rect(0, 0, 1, 1).elements();
        Element rect = new Rect(new Box(0, 0, 1, 1), 0, Style.of(Fill.of(Ink.BAND)));
        assertEquals(List.of(new Group(Frame.named("cell"), List.of(rect)), rect), elements);
    }

    @Test
    void placesAnotherPictureClippedToItsPaper() {
        Picture inner = new PictureBuilder().circle(1, 1, 1).picture(20, 10, "inner");
        Group group = (Group) new PictureBuilder().place(30, 40, inner).elements().get(0);
        assertEquals(new Point(31, 41), group.frame().transform().apply(new Point(1, 1)));
        assertEquals(Optional.of(new Box(0, 0, 20, 10)), group.frame().clip());
    }

    @Test
    void emptyTextDrawsNothing() {
        assertEquals(List.of(), new PictureBuilder().text(1, 1, "").elements());
    }

    @Test
    void linesStandOneBelowTheOther() {
        List<Element> elements = new PictureBuilder().lines(10, 20, 4, List.of("a", "", "b")).elements();
        assertEquals(new Point(10, 28), ((Text) elements.get(1)).at());
    }

    @Test
    void refusesALineWithoutPen() {
        assertThrows(IllegalStateException.class, () -> new PictureBuilder().noPen().line(0, 0, 1, 1));
    }
}
