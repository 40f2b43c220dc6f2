/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import static org.ferrule.profile.Laid.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.look.CurveLook;
import org.ferrule.picture.Box;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextStyle;
import org.ferrule.profile.Laid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Areas, axes and legends by themselves. */
class PlotPartsTest {
    private static final TextStyle STYLE = TextStyle.ofPt(7);
    private static final PlotArea AREA = new PlotArea(new Box(20, 10, 100, 50), 40, 240, 0.5, 1.5);

    @Test
    void valuesLieLinearlyOnThePaper() {
        assertNear(20, AREA.x(40), "left end");
        assertNear(70, AREA.x(140), "half-way along");
        assertNear(120, AREA.x(240), "right end");
        assertNear(60, AREA.y(0.5), "lower end");
        assertNear(22.5, AREA.y(1.25), "three quarters up");
        assertNear(10, AREA.y(1.5), "upper end");
    }

    @Test
    void placesOnThePaperAreTheValuesThatLieThere() {
        for (double along : new double[] { 0, 40, 77, 240, 300 }) {
            assertEquals(along, AREA.along(AREA.x(along)), 1e-9);
        }
        for (double across : new double[] { 0, 0.5, 0.7, 1.5, 2 }) {
            assertEquals(across, AREA.across(AREA.y(across)), 1e-9);
        }
    }

    @Test
    void whatLiesBetweenTheEndsIsInSight() {
        assertTrue(AREA.shows(40) && AREA.shows(240) && AREA.shows(100));
        assertFalse(AREA.shows(39.9) || AREA.shows(240.1));
    }

    @Test
    void anAreaWithoutExtentIsRefused() {
        Box box = AREA.box();
        assertEquals("nothing to plot from 1.0 to 1.0 and from 0.0 to 1.0",
                assertThrows(IllegalArgumentException.class, () -> new PlotArea(box, 1, 1, 0, 1)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> new PlotArea(box, 0, 1, 1, 1));
    }

    private static Picture axes(PlotArea area, double perUnit) {
        PictureBuilder g = new PictureBuilder();
        Axes axes = new Axes(area, STYLE);
        axes.along(g, perUnit, "along");
        axes.across(g, perUnit, "across");
        return g.picture(160, 90, "axes");
    }

    @ParameterizedTest
    @CsvSource({ "40, 240, 0.5, 1.5, 1", "0, 21.2, 2.8, 3.5, 1", "-250, 30, 0, 1.14, 1", "0, 1.6, 0, 0.13, 1",
        "0.04, 1.3, 0.4, 1.3, 25.4", "-0.3, 0.3, -2, 2, 1", "7, 19, 0, 90, 10" })
    void numbersStandAtTheirValues(double left, double right, double bottom, double top, double perUnit) {
        PlotArea area = new PlotArea(AREA.box(), left, right, bottom, top);
        Laid.assertTidy(axes(area, perUnit));
        Laid.assertNumbersAlong(axes(area, perUnit), area, perUnit);
        Laid.assertNumbersAcross(axes(area, perUnit), area, perUnit);
    }

    @Test
    void numbersHaveAsManyDecimalsAsTheirStepNeeds() {
        assertEquals(List.of("50", "100", "150", "200"), texts(axes(AREA, 1)).stream()
                .filter(t -> t.matches("[0-9]+")).toList());
        assertEquals(List.of("0.6", "0.8", "1.0", "1.2", "1.4"), texts(axes(AREA, 1)).stream()
                .filter(t -> t.matches("[0-9]\\.[0-9]+")).toList());
        assertEquals("0", texts(axes(new PlotArea(AREA.box(), -0.3, 0.3, 0, 1), 1)).stream()
                .filter(t -> t.matches("-?0(\\.0+)?")).findFirst().orElseThrow(), "zero has neither sign nor decimals");
    }

    private static List<String> texts(Picture picture) {
        return Drawn.of(picture).words().stream().map(Drawn.Words::text).toList();
    }

    @Test
    void numbersStandAsCloseAsCanBeRead() {
        Drawn drawn = Drawn.of(axes(AREA, 1));
        double apart = drawn.words("100").box().centre().xMm() - drawn.words("50").box().centre().xMm();
        assertTrue(apart >= 11 && apart < 11 * 2.5, "distance along: " + apart);
        double above = drawn.words("0.6").box().centre().yMm() - drawn.words("0.8").box().centre().yMm();
        assertTrue(above >= 6 && above < 6 * 2.5, "distance across: " + above);
    }

    @Test
    void namesOfAxesStandBesideTheirMiddle() {
        Drawn drawn = Drawn.of(axes(AREA, 1));
        Box along = drawn.words("along").box();
        assertNear(70, along.centre().xMm(), "below the middle");
        assertTrue(along.yMm() > drawn.words("100").box().bottomMm(), "below the numbers");
        assertTrue(along.bottomMm() < 60 + Axes.depthMm(STYLE), "in the room that is kept for it");
        Box across = drawn.words("across").box();
        assertNear(35, across.centre().yMm(), "beside the middle");
        assertTrue(across.rightMm() < drawn.words("0.8").box().xMm(), "left of the numbers");
        assertTrue(across.xMm() > 20 - Axes.roomMm(STYLE), "in the room that is kept for it");
    }

    private static PlotLegend legend(int entries, double widthMm) {
        PlotLegend legend = new PlotLegend(STYLE, widthMm);
        IntStream.range(0, entries)
                .forEach(i -> legend.curve(CurveLook.of(i % 8), "legend:" + i, "Device number " + i));
        return legend.note("A note that is read below all signs, however many of them there are to be read.");
    }

    private static Picture drawn(PlotLegend legend, double widthMm) {
        PictureBuilder g = new PictureBuilder();
        legend.draw(g, 5, 10);
        return g.picture(widthMm + 10, 20 + legend.heightMm(), "legend");
    }

    @ParameterizedTest
    @CsvSource({ "1, 120", "2, 30", "8, 170", "7, 60", "12, 300" })
    void entriesStandInColumnsInTheRoomThatTheyTake(int entries, double widthMm) {
        PlotLegend legend = legend(entries, widthMm);
        Picture picture = drawn(legend, widthMm);
        Drawn drawn = Drawn.of(picture);
        Laid.assertTidy(picture);
        assertEquals(List.of(), drawn.outside(new Box(5, 10, widthMm, legend.heightMm())));
        for (int i = 0; i < entries; i++) {
            Box line = drawn.marks("legend:" + i).get(0).box();
            Box text = drawn.words().get(i).box();
            assertNear(line.xMm() + 9, text.xMm(), "text behind its sample");
            assertNear(7, line.widthMm(), "length of a sample");
            assertNear(line.yMm(), text.centre().yMm(), "beside each other");
            assertTrue(text.bottomMm() < drawn.words().get(entries).box().yMm(), "the note stands below");
        }
    }

    @Test
    void columnsAreFilledDownwards() {
        Drawn drawn = Drawn.of(drawn(legend(8, 100), 100));
        List<String> first = drawn.words().stream().filter(w -> w.text().startsWith("Device"))
                .filter(w -> w.box().xMm() < 20).map(Drawn.Words::text).toList();
        assertEquals(IntStream.range(0, first.size()).mapToObj(i -> "Device number " + i).collect(Collectors.toList()),
                first);
        assertTrue(first.size() > 1 && first.size() < 8, first::toString);
    }

    @Test
    void aNarrowLegendShortensWhatIsTooLong() {
        PlotLegend legend = new PlotLegend(STYLE, 30).line("line:L1", "a lumen with a long name that goes on and on");
        Drawn drawn = Drawn.of(drawn(legend, 30));
        assertTrue(drawn.words().get(0).text().endsWith("\u2026"));
        assertTrue(drawn.words().get(0).box().rightMm() < 35);
    }

    @Test
    void signsStandInTheMiddleOfTheirSample() {
        PlotLegend legend = new PlotLegend(STYLE, 60).contact(true, "stops").contact(false, "may stop").ring("cross")
                .sign("own", (g, x, y) -> g.circle(x, y, 1));
        Drawn drawn = Drawn.of(drawn(legend, 60));
        for (String text : List.of("stops", "may stop", "cross", "own")) {
            Box words = drawn.words(text).box();
            assertTrue(drawn.marks().stream().anyMatch(m -> Laid.near(words.xMm() - 9 + 3.5, m.box().centre().xMm())
                    && Math.abs(m.box().centre().yMm() - words.centre().yMm()) < 0.2), text);
        }
        assertEquals(4, new PlotLegend(STYLE, 20).ring("a").ring("b").ring("c").ring("d").heightMm()
                / new PlotLegend(STYLE, 20).ring("a").heightMm(), 1e-9, "a row each where there is no room beside");
    }
}
