/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HitTestTest {

    private static final Frame CELL = Frame.named("cell");

    @Test
    void findsTheUppermostOfTwo() {
        Picture picture = picture(p -> p
                .group(Frame.named("below"), g -> g.rect(0, 0, 10, 10))
                .group(Frame.named("above"), g -> g.rect(5, 5, 10, 10)));
        assertEquals(List.of("above"), hits(picture, 7, 7));
        assertEquals(List.of("below"), hits(picture, 2, 2));
        assertEquals(List.of(), hits(picture, 30, 30));
    }

    @Test
    void namesTheInnermostFirstThroughUnnamedGroups() {
        Picture picture = picture(p -> p
                .group(Frame.named("row"), g -> g
                        .group(Frame.at(20, 0), h -> h
                                .group(CELL, k -> k.group(Frame.at(0, 5), m -> m.circle(3, 3, 2))))));
        assertEquals(List.of("cell", "row"), hits(picture, 23, 8));
    }

    @Test
    void elementsOutsideNamedGroupsLetTheClickThrough() {
        Picture picture = picture(p -> p.group(CELL, g -> g.rect(0, 0, 10, 10)).rect(0, 0, 50, 50));
        assertEquals(List.of("cell"), hits(picture, 5, 5));
    }

    @Test
    void followsTurnsAndScales() {
        Frame frame = CELL.scaled(2, 2).rotated(90).translated(50, 10);
        Picture picture = picture(p -> p.group(frame, g -> g.rect(0, 0, 10, 1)));
        assertEquals(List.of("cell"), hits(picture, 49, 28));
        assertEquals(List.of(), hits(picture, 68, 11));
    }

    @Test
    void whatIsClippedAwayIsNotHit() {
        Picture picture = picture(p -> p.group(CELL.clippedTo(new Box(0, 0, 4, 4)), g -> g.rect(0, 0, 10, 10)));
        assertEquals(List.of("cell"), hits(picture, 3, 3));
        assertEquals(List.of(), hits(picture, 6, 6));
    }

    @Test
    void lineIsHitWithinHalfItsWidthOrTheTolerance() {
        Picture thick = picture(p -> p.group(CELL, g -> g.pen(Ink.TEXT, 4).line(0, 10, 20, 10)));
        assertEquals(List.of("cell"), hits(thick, 10, 11.9));
        assertEquals(List.of(), hits(thick, 10, 12.1));
        Picture thin = picture(p -> p.group(CELL, g -> g.pen(Ink.TEXT, 0.1).line(0, 10, 20, 10)));
        assertEquals(1, thin.groupsAt(new Point(10, 10.9), 1).size());
        assertEquals(0, thin.groupsAt(new Point(10, 10.9), 0.5).size());
        assertEquals(0, thin.groupsAt(new Point(22, 10), 1).size());
    }

    @Test
    void toleranceIsMeasuredOnPaperWhateverTheScale() {
        Picture picture = picture(p -> p.group(CELL.scaled(10, 10), g -> g.pen(Ink.TEXT, 0.01).line(0, 1, 2, 1)));
        assertEquals(1, picture.groupsAt(new Point(10, 10.9), 1).size());
        assertEquals(0, picture.groupsAt(new Point(10, 11.5), 1).size());
    }

    @Test
    void cornerOfACircleIsNotTheCircle() {
        Picture picture = picture(p -> p.group(CELL, g -> g.circle(10, 10, 5)));
        assertEquals(List.of("cell"), hits(picture, 13, 13));
        assertEquals(List.of(), hits(picture, 14.5, 14.5));
    }

    @Test
    void holeIsNotHit() {
        Outline ring = Outline.from(10, 5).arc(5, 5, 5, 0, 360).close().moveTo(8, 5).arc(5, 5, 3, 0, 360).close();
        Picture picture = picture(p -> p.group(CELL, g -> g.fill(Ink.BAND).path(ring)));
        assertEquals(List.of("cell"), hits(picture, 9, 5));
        assertEquals(List.of(), hits(picture, 5, 5));
    }

    @Test
    void openPathIsHitInsideOnlyIfFilled() {
        Point[] corners = { new Point(0, 0), new Point(10, 0), new Point(10, 10) };
        assertEquals(List.of(), hits(picture(p -> p.group(CELL, g -> g.polyline(corners))), 8, 2));
        assertEquals(List.of("cell"),
                hits(picture(p -> p.group(CELL, g -> g.fill(Ink.BAND).polyline(corners))), 8, 2));
    }

    /** Told at nine and four tenths of the width to the left and to the right of the place. */
    @ParameterizedTest
    @CsvSource({ "START, false, false, true, true", "MIDDLE, false, true, true, false",
        "END, true, true, false, false" })
    void textIsHitOnTheSideOfItsPlaceThatTheAnchorSays(Text.Anchor anchor, boolean farLeft, boolean left,
            boolean right, boolean farRight) {
        Picture picture = picture(p -> p.group(CELL, g -> g.text(50, 50, "upwards", anchor, 0)));
        double width = TextMeasure.standard().widthMm("upwards", TextStyle.ofPt(9));
        assertEquals(farLeft, !hits(picture, 50 - 0.9 * width, 49.5).isEmpty());
        assertEquals(left, !hits(picture, 50 - 0.4 * width, 49.5).isEmpty());
        assertEquals(right, !hits(picture, 50 + 0.4 * width, 49.5).isEmpty());
        assertEquals(farRight, !hits(picture, 50 + 0.9 * width, 49.5).isEmpty());
    }

    @Test
    void edgeOfALineIsStillTheLine() {
        Picture line = picture(p -> p.group(CELL, g -> g.pen(Ink.TEXT, 4).line(0, 10, 20, 10)));
        assertEquals(List.of("cell"), hits(line, 10, 12));
        Picture frame = picture(p -> p.group(CELL, g -> g.pen(Ink.TEXT, 4).rect(10, 10, 20, 20)));
        assertEquals(List.of("cell"), hits(frame, 8, 20));
        assertEquals(List.of(), hits(frame, 7.9, 20));
        assertEquals(List.of("cell"), hits(frame, 32, 20));
    }

    /** A zigzag of which a level line at 10 mm crosses the sides at 0, 2, 6 and 14 mm. */
    @Test
    void insideOfASlantedOutlineIsToldWhereItsSidesAreCrossed() {
        Point[] corners = { new Point(0, 0), new Point(4, 20), new Point(8, 0), new Point(20, 20), new Point(20, 30),
            new Point(0, 30) };
        Picture picture = picture(p -> p.group(CELL, g -> g.noPen().fill(Ink.BAND).polygon(corners)));
        assertEquals(List.of("cell"), hits(picture, 1, 10));
        assertEquals(List.of(), hits(picture, 4, 10));
        assertEquals(List.of("cell"), hits(picture, 7, 15));
        assertEquals(List.of(), hits(picture, 15, 10));
        assertEquals(List.of("cell"), hits(picture, 13, 15));
    }

    @Test
    void textIsHitInItsTurnedBox() {
        Picture picture = picture(p -> p.lettering(TextStyle.ofPt(10))
                .group(CELL, g -> g.text(20, 60, "upwards", Text.Anchor.START, -90)));
        assertEquals(List.of("cell"), hits(picture, 19, 55));
        assertEquals(List.of(), hits(picture, 25, 55));
        assertEquals(List.of(), hits(picture, 19, 65));
    }

    private static Picture picture(Consumer<PictureBuilder> content) {
        PictureBuilder builder = new PictureBuilder();
        content.accept(builder);
        return builder.picture(100, 100, "hits");
    }

    private static List<String> hits(Picture picture, double xMm, double yMm) {
        return picture.groupsAt(new Point(xMm, yMm), 0).stream().map(g -> g.frame().id().orElseThrow()).toList();
    }
}
