/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
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
    void everyShapeTakesThePenAndTheFill() {
        Style style = Style.of(Stroke.of(Ink.RULE, 0.5), Fill.of(Ink.BAND));
        Point[] corners = { new Point(0, 0), new Point(10, 0), new Point(10, 10) };
        Outline outline = Outline.from(0, 0).curveTo(1, 2, 3, 4, 5, 6).lineTo(9, 9);
        PictureBuilder builder = new PictureBuilder().pen(Ink.RULE, 0.5).fill(Ink.BAND);
        assertEquals(List.of(Path.polyline(List.of(corners), style), Path.polygon(List.of(corners), style),
                outline.path(style), new Line(new Point(1, 2), new Point(3, 4), Stroke.of(Ink.RULE, 0.5)),
                new Ellipse(new Point(1, 2), 3, 4, Style.of(Stroke.of(Ink.RULE, 0.5)))),
                builder.polyline(corners).polygon(corners).path(outline).line(1, 2, 3, 4).noFill()
                        .ellipse(1, 2, 3, 4).elements());
    }

    @Test
    void textStandsWithItsBeginningMiddleOrEndAtThePlace() {
        TextStyle style = TextStyle.ofPt(9);
        Point place = new Point(3, 4);
        assertEquals(List.of(new Text(place, "a", style, Text.Anchor.START, 0),
                new Text(place, "b", style, Text.Anchor.MIDDLE, 0), new Text(place, "c", style, Text.Anchor.END, 0)),
                new PictureBuilder().text(3, 4, "a").textMiddle(3, 4, "b").textEnd(3, 4, "c").elements());
    }

    @Test
    void painterIsTalkedToByKind() {
        List<Element> painted = new ArrayList<>();
        Painter<RuntimeException> painter = new Recorder(painted);
        List<Element> elements = new PictureBuilder().rect(0, 0, 2, 1).circle(5, 5, 1).line(0, 0, 1, 1).text(1, 1, "a")
                .polyline(new Point(0, 0), new Point(1, 1)).group(Frame.PLAIN, g -> g.rect(0, 0, 1, 1)).elements();
        elements.forEach(element -> element.paintOn(painter));
        assertEquals(List.of(((Shape) elements.get(0)).outline(), ((Shape) elements.get(1)).outline(), elements.get(2),
                elements.get(3), elements.get(4), elements.get(5)), painted);
    }

    /** A medium without rectangles and ellipses. */
    private record Recorder(List<Element> painted) implements Painter<RuntimeException> {

        @Override
        public void line(Line line) {
            painted.add(line);
        }

        @Override
        public void path(Path path) {
            painted.add(path);
        }

        @Override
        public void text(Text text) {
            painted.add(text);
        }

        @Override
        public void group(Group group) {
            painted.add(group);
        }
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
