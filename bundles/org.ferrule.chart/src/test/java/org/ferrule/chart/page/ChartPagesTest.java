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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.DemoChart;
import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Words;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.device.Device;
import org.ferrule.picture.Box;
import org.ferrule.picture.Document;
import org.ferrule.picture.Group;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Rect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChartPagesTest {
    private static final OffsetDateTime NOW = OffsetDateTime.of(2026, 5, 11, 9, 0, 0, 0, ZoneOffset.UTC);
    private static final ChartContent SMALL = DemoChart.content(DemoChart.outer(), DemoChart.inner(8));
    private static final ChartContent WIDE = DemoChart.content(DemoChart.outer(), DemoChart.inner(20),
            new PaperFormat(PaperFormat.Size.A3, true));
    private static final ChartContent LARGE = DemoChart.content(times(4, DemoChart.outer()), DemoChart.inner(26));
    private static final ChartContent TALL = DemoChart.content(times(6, DemoChart.outer()), DemoChart.inner(1),
            new PaperFormat(PaperFormat.Size.LETTER, false));

    private static final Map<ChartContent, Document> DOCUMENTS = new HashMap<>();

    static Stream<ChartContent> charts() {
        return Stream.of(SMALL, WIDE, LARGE, TALL);
    }

    private static List<Device> times(int count, List<Device> devices) {
        List<Device> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.addAll(devices);
        }
        return all;
    }

    private static List<Picture> pages(ChartContent chart) {
        return DOCUMENTS.computeIfAbsent(chart, c -> ChartPages.of(c, NOW)).pages();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void noTextOverlapsAnotherOrLeavesThePaper(ChartContent chart) {
        for (Picture page : pages(chart)) {
            Drawn drawn = Drawn.of(page);
            assertEquals(List.of(), drawn.overlaps());
            assertEquals(List.of(), drawn.outside(page.paper().inset(8)));
        }
    }

    @ParameterizedTest
    @MethodSource("charts")
    void everythingInACellStaysInIt(ChartContent chart) {
        for (Picture page : pages(chart)) {
            Drawn drawn = Drawn.of(page);
            for (Drawn.Named cell : drawn.groups().stream().filter(g -> g.id().startsWith("cell:")).toList()) {
                Box box = ground(cell.group());
                drawn.words().stream().filter(w -> w.group().equals(cell.id()))
                        .forEach(w -> assertTrue(holds(box, w.box()), () -> cell.id() + " " + w));
            }
        }
    }

    private static Box ground(Group cell) {
        return cell.elements().stream().filter(Rect.class::isInstance).map(e -> ((Rect) e).box()).findFirst()
                .orElseThrow();
    }

    private static boolean holds(Box outer, Box inner) {
        return inner.xMm() >= outer.xMm() && inner.rightMm() <= outer.rightMm() && inner.yMm() >= outer.yMm()
                && inner.bottomMm() <= outer.bottomMm();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void everyCellStandsOnOnePageAndTellsItsVerdictInAWord(ChartContent chart) {
        Map<String, String> cells = new HashMap<>();
        for (Picture page : pages(chart)) {
            Drawn drawn = Drawn.of(page);
            drawn.groups().stream().filter(g -> g.id().startsWith("cell:"))
                    .forEach(g -> assertFalse(cells.put(g.id(), drawn.text(g.id())) != null, g.id() + " twice"));
        }
        assertEquals(chart.rows().size() * chart.columns().size(), cells.size());
        cells.forEach((id, text) -> assertTrue(text.matches("(fits|by claim|tight|unknown|blocked)\\b.*"), text));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void everyDeviceIsNamedInFull(ChartContent chart) {
        List<Drawn> drawn = pages(chart).stream().map(Drawn::of).toList();
        for (int row = 0; row < chart.rows().size(); row++) {
            assertNamed(drawn, "row:" + row, chart.rows().get(row));
        }
        for (int column = 0; column < chart.columns().size(); column++) {
            assertNamed(drawn, "column:" + column, chart.columns().get(column));
        }
    }

    private static void assertNamed(List<Drawn> pages, String id, Head head) {
        List<Drawn> with = pages.stream().filter(page -> page.hasGroup(id)).toList();
        assertFalse(with.isEmpty(), id);
        for (Drawn page : with) {
            String text = page.text(id).replace('\u00a0', ' ');
            assertTrue(text.contains(head.name()) && text.contains(head.figure()), () -> id + ": " + text);
        }
    }

    @ParameterizedTest
    @MethodSource("charts")
    void everyPageCarriesCautionRuleSetRevisionDateAndItsNumber(ChartContent chart) {
        List<Picture> pages = pages(chart);
        for (int i = 0; i < pages.size(); i++) {
            Drawn page = Drawn.of(pages.get(i));
            String caution = page.text("caution");
            assertTrue(caution.contains("instructions for use") && caution.contains("licensed staff"), caution);
            assertTrue(caution.contains("Invented data"), "footnotes of the author");
            String text = page.text();
            for (String words : List.of("Rule set: Test rules, rev. 1", "Revision 4, 2026-05-11", "by A. Nyberg",
                    "Through the guides", "page " + (i + 1) + " of " + pages.size(), "fits by claim", "conflict")) {
                assertTrue(text.contains(words), words + " on page " + (i + 1));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("charts")
    void nothingIsSetTooSmallToBeRead(ChartContent chart) {
        double least = chart.paper().size() == PaperFormat.Size.A3 ? 6.5 * 1.25 : 6.5;
        for (Picture page : pages(chart)) {
            Drawn.of(page).forEachLine(w -> assertTrue(w.sizePt() >= least - 0.001, w.toString()));
        }
    }

    @ParameterizedTest
    @MethodSource("charts")
    void everyFootnoteThatACellAsksForStandsOnItsPage(ChartContent chart) {
        for (Picture page : pages(chart)) {
            Drawn drawn = Drawn.of(page);
            List<String> labels = drawn.words().stream().filter(w -> w.group().isEmpty() && isCount(w.text()))
                    .map(Words::text).toList();
            drawn.words().stream().filter(w -> w.group().startsWith("cell:") && w.text().matches("\\d+,?"))
                    .map(w -> w.text().replace(",", "")).filter(n -> !isThousandths(n, drawn))
                    .forEach(n -> assertTrue(labels.contains(n), n + " in " + labels));
        }
    }

    private static boolean isCount(String text) {
        return text.matches("\\d+");
    }

    /** Clearances have decimals and so are never taken for a footnote. */
    private static boolean isThousandths(String number, Drawn drawn) {
        return number.contains(".");
    }

    @Test
    void aSmallChartIsOnePageAndOneOfSources() {
        assertEquals(2, pages(SMALL).size());
        String about = Drawn.of(pages(SMALL).get(1)).text();
        for (String words : List.of("Guides and extensions, rev. 3", "Balloons, stents and the rest, rev. 7",
                "Made-up bench report, rev. 1, p. 7", "Made-up instructions for use, rev. C, p. 3", "Common practice",
                "Going in: " + Counts.in(SMALL).inWords())) {
            assertTrue(about.replace('\n', ' ').contains(words), words + " in " + about);
        }
    }

    @Test
    void runsOfColumnsStandBelowEachOtherWhereThereIsRoom() {
        assertEquals(2, pages(WIDE).size());
        Drawn page = Drawn.of(pages(WIDE).get(0));
        assertEquals(2, page.groups().stream().filter(g -> g.id().equals("row:0")).count(), "heads are repeated");
    }

    @Test
    void aLargeChartIsCutBothWaysWithAMapOfItsPages() {
        List<Picture> pages = pages(LARGE);
        assertTrue(pages.size() > 4, pages.size() + " pages");
        assertTrue(Drawn.of(pages.get(0)).hasGroup("row:0") && Drawn.of(pages.get(1)).hasGroup("row:0"));
        assertFalse(Drawn.of(pages.get(0)).hasGroup("row:" + (LARGE.rows().size() - 1)));
    }

    @Test
    void countsEveryCellOnce() {
        int sum = Stream.of(VerdictLook.values()).mapToInt(Counts.in(LARGE)::of).sum();
        assertEquals(LARGE.rows().size() * LARGE.columns().size(), sum);
        assertEquals("42 fits, 2 fits by claim, 1 tight, 17 unknown, 3 blocked", Counts.in(SMALL).inWords());
    }

    @Test
    void worseOnTheWayOutIsMarkedInWords() {
        boolean marked = pages(WIDE).stream().map(Drawn::of).anyMatch(p -> p.text().contains("out: tight"));
        assertTrue(marked);
    }

    @Test
    void aChartWithoutDevicesStillSaysWhatItIs() {
        ChartContent empty = DemoChart.content(List.of(), List.of());
        Document document = ChartPages.of(empty, NOW);
        assertEquals(1, document.pages().size());
        assertTrue(Drawn.of(document.pages().get(0)).text().contains("Through the guides"));
    }

    @Test
    void pairsThatWereNotAskedAreShownAsSuch() {
        ChartContent c = SMALL;
        ChartContent none = new ChartContent(c.imprint(), c.basis(), c.rows(), c.columns(), (r, k) -> Optional.empty(),
                c.footnotes(), c.units(), c.number(), c.paper());
        Drawn page = Drawn.of(ChartPages.of(none, NOW).pages().get(0));
        assertEquals(c.rows().size() * c.columns().size(),
                page.words().stream().filter(w -> w.text().equals("\u2013")).count());
    }

    @Test
    void withoutNumbersCellsShowNone() {
        ChartContent c = SMALL;
        ChartContent none = new ChartContent(c.imprint(), c.basis(), c.rows(), c.columns(), c.answers(), c.footnotes(),
                c.units(), ShownNumber.NONE, c.paper());
        Drawn page = Drawn.of(ChartPages.of(none, NOW).pages().get(0));
        assertTrue(page.words().stream().filter(w -> w.group().startsWith("cell:"))
                .noneMatch(w -> w.text().matches("\u2212?\\d+\\.\\d+")));
        assertTrue(page.text().contains("No clearances are shown"));
    }

    @Test
    void theSameChartGivesTheSamePages() {
        assertEquals(pages(SMALL), ChartPages.of(SMALL, NOW).pages());
    }
}
