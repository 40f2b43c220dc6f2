/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.picture.Box;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Rect;
import org.ferrule.picture.TextStyle;
import org.junit.jupiter.api.Test;

/** Texts below each other, and pieces of them in columns beside each other. */
class ColumnTest {
    private static final PageStyle STYLE = new PageStyle(1);
    private static final double WIDTH_MM = 40;
    private static final String LONG = "a text that goes on and on ".repeat(8).strip();

    private static Column column(int lines) {
        return new Column(STYLE, WIDTH_MM, lines);
    }

    private static Drawn drawn(Column column) {
        PictureBuilder g = new PictureBuilder();
        column.draw(g, 5, 7);
        return Drawn.of(g.picture(100, 100, "column"));
    }

    private static Drawn drawn(Pieces pieces) {
        PictureBuilder g = new PictureBuilder();
        pieces.draw(g, 5, 7);
        return Drawn.of(g.picture(200, 100, "pieces"));
    }

    @Test
    void textsStandBelowEachOtherFromTheTopAndTheColumnIsAsHighAsAllOfThem() {
        Column column = column(9).small("first").strong("second").muted("third");
        Drawn drawn = drawn(column);
        assertEquals(List.of("first", "second", "third"), drawn.words().stream().map(Drawn.Words::text).toList());
        assertEquals(List.of(), drawn.overlaps());
        double lines = 3 * PageStyle.leading(STYLE.small());
        assertEquals(lines + 3 * 0.1, column.heightMm(), 1e-9);
        assertTrue(drawn.words("first").box().yMm() >= 7 && drawn.words("third").box().bottomMm() <= 7 + lines + 0.3);
        assertEquals(5, drawn.words("first").box().xMm(), 1e-9);
    }

    @Test
    void whatIsBlankTakesNoRoom() {
        assertTrue(column(1).small(" ").isEmpty());
        assertEquals(0, column(1).heightMm());
        assertEquals(2.5, column(1).gap(2.5).heightMm(), 1e-9);
    }

    @Test
    void textsAreCutToSoManyLinesButNamesAndCautionsToNoLessThanTwo() {
        TextStyle small = STYLE.small();
        assertEquals(1, drawn(column(1).small(LONG)).words().size());
        assertEquals(3, drawn(column(3).small(LONG)).words().size());
        assertEquals(2, drawn(column(1).strong(LONG)).words().size());
        assertEquals(3, drawn(column(3).strong(LONG)).words().size());
        assertEquals(2, drawn(column(1).warning(LONG, small)).words().size());
        assertEquals(3, drawn(column(3).warning(LONG, small)).words().size());
        assertEquals(1, drawn(column(1).signed(Column::checkBox, LONG, small)).words().size());
    }

    @Test
    void whatIsToBeTickedOffAndLimitsStandThereInFull() {
        assertEquals(LONG, drawn(column(1).full(LONG)).text());
        assertEquals(LONG, drawn(column(1).box(LONG, STYLE.small())).text());
        assertEquals(LONG, drawn(column(1).fullSigned(StopSign::draw, LONG)).text());
    }

    @Test
    void aSignStandsInFrontOfItsTextInTheMiddleOfTheFirstLine() {
        Drawn drawn = drawn(column(3).box(LONG, STYLE.small()));
        Box box = drawn.marks().get(0).box();
        Box first = drawn.words().get(0).box();
        assertTrue(box.xMm() >= 5 && box.rightMm() < first.xMm());
        assertEquals(7 + PageStyle.leading(STYLE.small()) / 2, box.centre().yMm(), 1e-9);
        assertEquals(box.widthMm(), box.heightMm(), 1e-9);
        assertTrue(box.heightMm() < PageStyle.leading(STYLE.small()), "boxes below each other stay apart");
        assertTrue(drawn.words().stream().allMatch(line -> line.box().xMm() == first.xMm()
                && line.box().rightMm() <= 5 + WIDTH_MM + 0.01), "all lines are indented");
    }

    @Test
    void everyCautionHasASign() {
        assertEquals(0, drawn(column(1).small("mind the wire")).marks().size());
        assertTrue(drawn(column(1).warning("mind the wire", STYLE.small())).marks().size() > 0);
    }

    @Test
    void aVerdictIsAShapeOnTheGroundOfItsTone() {
        VerdictLook look = VerdictLook.FITS;
        Drawn drawn = drawn(column(1).signed(Column.verdict(look), "fits", STYLE.small()));
        Rect ground = (Rect) drawn.marks().get(0).element();
        assertEquals(look.tone(Scheme.LIGHT).fill(), ground.style().fill());
        assertTrue(drawn.marks().size() > 1, "a shape on it");
        for (Drawn.Mark mark : drawn.marks()) {
            assertEquals(ground.box().centre().xMm(), mark.box().centre().xMm(), 0.6);
            mark.box().corners().forEach(c -> assertTrue(ground.box().inset(-1e-9).contains(c), mark::toString));
        }
    }

    private static Pieces pieces(int count, int... heights) {
        Pieces pieces = new Pieces(column(9), count, 128);
        IntStream.range(0, heights.length)
                .forEach(i -> pieces.add(column -> column.small("piece " + i).gap(heights[i])));
        return pieces;
    }

    private static double pieceMm(double gap) {
        return column(9).small("piece").heightMm() + gap;
    }

    @Test
    void piecesStandInColumnsOfOneWidthBesideEachOtherInTheirOrder() {
        Drawn drawn = drawn(pieces(3, 5, 5, 5));
        // (128 - 2 * 4) / 3 wide, 4 apart
        assertEquals(5, drawn.words("piece 0").box().xMm(), 1e-9);
        assertEquals(5 + 44, drawn.words("piece 1").box().xMm(), 1e-9);
        assertEquals(5 + 88, drawn.words("piece 2").box().xMm(), 1e-9);
        assertEquals(drawn.words("piece 0").box().yMm(), drawn.words("piece 2").box().yMm(), 1e-9);
        assertEquals(pieceMm(5), pieces(3, 5, 5, 5).heightMm(), 1e-9);
    }

    @Test
    void columnsAreAsLowAsTheyCanBeAndNoPieceIsTorn() {
        assertEquals(2 * pieceMm(5), pieces(2, 5, 5, 5, 5).heightMm(), 1e-9);
        assertEquals(pieceMm(30), pieces(2, 5, 5, 30).heightMm(), 1e-9);
        Drawn drawn = drawn(pieces(2, 5, 5, 30));
        assertEquals(drawn.words("piece 0").box().xMm(), drawn.words("piece 1").box().xMm(), 1e-9);
        assertEquals(drawn.words("piece 0").box().yMm() + pieceMm(5), drawn.words("piece 1").box().yMm(), 1e-9);
        assertEquals(drawn.words("piece 0").box().yMm(), drawn.words("piece 2").box().yMm(), 1e-9);
        // Three of one height need a column of two, which is found within a millimetre.
        assertEquals(2 * pieceMm(5), pieces(2, 5, 5, 5).heightMm(), 1e-9);
        assertEquals(0, pieces(2).heightMm());
    }
}
