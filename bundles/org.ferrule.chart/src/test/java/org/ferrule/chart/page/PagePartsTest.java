/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.chart.DemoChart;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.chart.words.Phrases;
import org.ferrule.fit.device.Device;
import org.ferrule.picture.Box;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Rect;
import org.junit.jupiter.api.Test;

/** The parts of which chart pages are made. */
class PagePartsTest {
    private static final OffsetDateTime NOW = OffsetDateTime.of(2026, 5, 11, 9, 0, 0, 0, ZoneOffset.UTC);

    /** Heads in groups of these sizes. */
    private static List<Head> heads(int... groups) {
        List<Head> heads = new ArrayList<>();
        for (int group = 0; group < groups.length; group++) {
            for (int i = 0; i < groups[group]; i++) {
                heads.add(new Head("", "device", "", "", "", "", "group " + group));
            }
        }
        return heads;
    }

    @Test
    void headsAreCutIntoEvenRunsWhereNoGroupEnds() {
        assertEquals(List.of(new Span(0, 5), new Span(5, 10)), Span.cut(heads(10), 6));
        assertEquals(List.of(new Span(0, 6)), Span.cut(heads(6), 6));
        assertEquals(List.of(new Span(0, 4), new Span(4, 7)), Span.cut(heads(7), 6));
        assertEquals(List.of(), Span.cut(heads(), 6));
    }

    @Test
    void headsAreCutWhereAGroupEndsIfThatLeavesMostOfTheRoomUsed() {
        assertEquals(List.of(new Span(0, 6), new Span(6, 10)), Span.cut(heads(6, 4), 6));
        assertEquals(List.of(new Span(0, 4), new Span(4, 10)), Span.cut(heads(4, 6), 6));
        assertEquals(new Span(0, 5), Span.cut(heads(2, 8), 6).get(0), "a third of the room is too little");
        assertEquals(new Span(0, 5), Span.cut(heads(4, 1, 5), 6).get(0), "the border nearest to the middle");
    }

    @Test
    void lastBorderIsThatOfAGroupOrTheEnd() {
        assertEquals(8, Span.lastBorder(heads(8, 8), 0, 10));
        assertEquals(6, Span.lastBorder(heads(6, 8), 0, 10));
        assertEquals(10, Span.lastBorder(heads(5, 8), 0, 10), "half of the room is too little");
        assertEquals(10, Span.lastBorder(heads(8, 2), 0, 10), "all heads");
        assertEquals(13, Span.lastBorder(heads(10, 3, 4), 5, 14));
        assertEquals(1, Span.lastBorder(heads(1, 1), 0, 1));
    }

    private record At(int item, double x, double y) {
    }

    private static Flow flow(double widthMm, List<At> drawn, double... widths) {
        Flow flow = new Flow(widthMm, 4);
        IntStream.range(0, widths.length)
                .forEach(i -> flow.add(widths[i], (g, x, y) -> drawn.add(new At(i, x, y))));
        return flow;
    }

    @Test
    void itemsFlowIntoLinesAsWideAsTheRoom() {
        List<At> drawn = new ArrayList<>();
        Flow flow = flow(30, drawn, 10, 20, 5, 40, 3);
        flow.draw(new PictureBuilder(), 100, 200);
        assertEquals(List.of(new At(0, 100, 200), new At(1, 110, 200), new At(2, 100, 204), new At(3, 100, 208),
                new At(4, 100, 212)), drawn);
        assertEquals(4, flow.lines());
        assertEquals(16, flow.heightMm());
        assertEquals(78, flow.wholeMm());
        assertEquals(0, flow(30, drawn).heightMm());
    }

    private static List<Rect> cells(PageMap map, int page) {
        PictureBuilder g = new PictureBuilder();
        map.draw(g, 10, 20, page);
        return Drawn.of(g.picture(100, 100, "map")).marks().stream().map(m -> (Rect) m.element()).toList();
    }

    @Test
    void aMapShowsPagesAcrossFirstAndMarksOne() {
        PageMap map = new PageMap(2, 3);
        List<Rect> cells = cells(map, 4);
        assertEquals(6, cells.size());
        assertEquals(new Box(10, 20, 5.2, 3.6), cells.get(0).box());
        assertEquals(new Box(10 + 5.2, 20 + 3.6, 5.2, 3.6), cells.get(4).box());
        assertEquals(Ink.TEXT, cells.get(4).style().fill().ground().orElseThrow());
        assertEquals(5, cells.stream().filter(c -> c.style().fill().ground().orElseThrow().equals(Ink.PAPER)).count());
        assertEquals(15.6, map.widthMm(), 1e-9);
        assertEquals(7.2, map.heightMm(), 1e-9);
    }

    @Test
    void aMapOfManyPagesShrinksIntoItsRoomAndLosesItsNumbers() {
        assertEquals(40, new PageMap(1, 10).widthMm(), 1e-9);
        assertEquals(14, new PageMap(7, 1).heightMm(), 1e-9);
        assertEquals("1 2 3 4 5 6", numbers(new PageMap(2, 3)));
        assertEquals("", numbers(new PageMap(1, 10)));
        assertEquals("", numbers(new PageMap(7, 2)));
        assertEquals(List.of(), cells(new PageMap(1, 1), 0));
        assertEquals(0, new PageMap(1, 1).widthMm() + new PageMap(1, 1).heightMm());
    }

    private static String numbers(PageMap map) {
        PictureBuilder g = new PictureBuilder();
        map.draw(g, 10, 20, 0);
        return Drawn.of(g.picture(100, 100, "map")).text();
    }

    @Test
    void footnotesHaveAsManyColumnsAsHaveRoom() {
        PageStyle style = new PageStyle(1);
        assertEquals(1, NoteBlocks.columns(50, style));
        assertEquals(1, NoteBlocks.columns(160, style));
        assertEquals(2, NoteBlocks.columns(161, style));
        assertEquals(78, NoteBlocks.columnMm(161, style), 1e-9);
        assertEquals(1, NoteBlocks.columns(161, new PageStyle(1.2)));
    }

    private static List<Picture> pages(SignedOff signed) {
        ChartContent c = DemoChart.content(DemoChart.outer(), DemoChart.inner(1));
        Imprint imprint = new Imprint(c.imprint().title(), c.imprint().audience(), c.imprint().author(),
                c.imprint().revision(), c.imprint().date(), Optional.of(signed));
        return ChartPages.of(new ChartContent(imprint, c.basis(), c.rows(), c.columns(), c.answers(), c.footnotes(),
                c.units(), c.number(), c.paper()), NOW).pages();
    }

    private static String text(List<Picture> pages) {
        return String.join(" ", pages.stream().map(page -> Drawn.of(page).text()).toList());
    }

    @Test
    void aChartThatChangedSinceItsSignOffSaysSoOnEveryPageAndTellsWhere() {
        List<Picture> pages = pages(new SignedOff("Signed off, but changed since", false, List.of("one pair differs")));
        assertTrue(Drawn.of(pages.get(0)).text().contains("Signed off, but changed since"));
        assertTrue(text(pages).contains("one pair differs"));
        List<Picture> upToDate = pages(new SignedOff("Signed off by the board", true, List.of("one pair differs")));
        assertTrue(Drawn.of(upToDate.get(0)).text().contains("Signed off by the board"));
        assertFalse(text(upToDate).contains("one pair differs"));
    }

    @Test
    void ofManyChangesFortyAreToldAndHowManyMoreThereAre() {
        String text = text(pages(new SignedOff("Changed", false,
                IntStream.rangeClosed(1, 43).mapToObj(i -> "change number " + i + ".").toList())));
        assertTrue(text.contains("change number 40.") && !text.contains("change number 41."), text);
        assertTrue(text.contains("3 more"), text);
        String forty = text(pages(new SignedOff("Changed", false,
                IntStream.rangeClosed(1, 40).mapToObj(i -> "change number " + i + ".").toList())));
        assertTrue(forty.contains("change number 40.") && !forty.contains("0 more"), forty);
    }

    @Test
    void theHeadOfAPageEndsBesideTheMapOfAllPages() {
        List<Picture> pages = ChartPages.of(DemoChart.content(DemoChart.outer(), DemoChart.inner(8)), NOW).pages();
        assertTrue(pages.size() > 1);
        Drawn drawn = Drawn.of(pages.get(0));
        Box of = drawn.words().stream().filter(w -> w.text().matches("page 1 of \\d+")).findFirst().orElseThrow().box();
        double right = pages.get(0).paper().rightMm() - 9;
        double map = drawn.marks("").stream().filter(m -> m.element() instanceof Rect && m.box().yMm() < 20
                && m.box().xMm() > right - 45).mapToDouble(m -> m.box().xMm()).min().orElse(right + 3);
        assertEquals(map - 3, of.rightMm(), 1e-6);
    }

    /** Sixty rows are too many for a page of A4, however few columns there are. */
    @Test
    void everyRowStandsOnOnePageAndWithinIt() {
        List<Device> outer = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            outer.addAll(DemoChart.outer());
        }
        List<Picture> pages = ChartPages.of(DemoChart.content(outer, DemoChart.inner(0)), NOW).pages();
        List<String> rows = new ArrayList<>();
        for (Picture page : pages) {
            Drawn drawn = Drawn.of(page);
            drawn.groups().stream().map(Drawn.Named::id).filter(id -> id.startsWith("row:")).forEach(rows::add);
            double bottom = drawn.marks("caution").stream().mapToDouble(m -> m.box().yMm()).min().orElseThrow();
            drawn.words().stream().filter(w -> w.group().startsWith("row:"))
                    .forEach(w -> assertTrue(w.box().bottomMm() < bottom, w::text));
        }
        assertEquals(IntStream.range(0, 60).mapToObj(i -> "row:" + i).toList(), rows);
    }

    private static final CellView WORSE_OUT = new CellView(VerdictLook.FITS, "0.12", "4.7",
            Optional.of(VerdictLook.TIGHT), List.of(), "fits going in, tight coming out");

    @Test
    void aVerdictThatIsWorseComingOutHasALineOfItsOwnInItsCell() {
        CellPainter painter = new CellPainter(new PageStyle(1), Phrases.english());
        CellView alike = new CellView(WORSE_OUT.look(), "0.12", "4.7", Optional.empty(), List.of(), "fits");
        assertTrue(painter.heightMm(WORSE_OUT, new PageNotes(), 30) > painter.heightMm(alike, new PageNotes(), 30) + 2);
        Drawn worse = cell(painter, WORSE_OUT);
        Drawn same = cell(painter, alike);
        assertEquals(same.words().size() + 1, worse.words().size());
        assertTrue(worse.marks().size() > same.marks().size(), "with a sign");
        Drawn.Words out = worse.words().get(worse.words().size() - 1);
        assertTrue(out.text().contains(Phrases.english().get("cell.TIGHT")), out::text);
        assertTrue(worse.words().stream().filter(w -> w != out).allMatch(w -> w.box().bottomMm() < out.box().yMm()));
        assertTrue(out.box().bottomMm() <= 7 + painter.heightMm(WORSE_OUT, new PageNotes(), 30));
    }

    private static Drawn cell(CellPainter painter, CellView cell) {
        PictureBuilder g = new PictureBuilder();
        painter.paint(g, cell, new PageNotes(), new Box(5, 7, 30, 20), "cell");
        return Drawn.of(g.picture(60, 60, "cell"));
    }
}
