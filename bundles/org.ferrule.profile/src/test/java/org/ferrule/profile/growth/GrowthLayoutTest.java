/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.growth;

import static org.ferrule.profile.Laid.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Mark;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Segment;
import org.ferrule.profile.Laid;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the parts of the plot of growth curves lie, and what it says. */
class GrowthLayoutTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final Device SOFT = GrowthTest.balloon("soft", "8 atm", "14 atm", "6 atm", "2.90 mm", "8 atm",
            "3.00 mm", "12 atm", "3.20 mm", "16 atm", "3.60 mm");
    private static final Device HARD = GrowthTest.balloon("hard", "12 atm", "20 atm", "12 atm", "3.00 mm", "20 atm",
            "3.08 mm");
    private static final GrowthComparison BOTH = GrowthComparison.of(List.of(SOFT, HARD));

    @ParameterizedTest
    @CsvSource({ "200, 130", "110, 110", "260, 90" })
    void wordsStandApartAtEverySize(double widthMm, double heightMm) {
        GrowthPlot plot = new GrowthPlot(BOTH, WORDS, widthMm, heightMm);
        Picture picture = plot.picture();
        assertEquals(widthMm, picture.widthMm());
        assertEquals(heightMm, picture.heightMm());
        Laid.assertTidy(picture);
        Laid.assertNumbersAlong(picture, plot.area(), 1);
        Laid.assertNumbersAcross(picture, plot.area(), 1);
    }

    @Test
    void inchesAreNumberedInInches() {
        GrowthPlot plot = new GrowthPlot(BOTH, ProfileWords.english(UnitPreferences.in(LengthUnit.INCH)), 200, 130);
        Laid.assertNumbersAcross(plot.picture(), plot.area(), 25.4);
    }

    /** From 2.90 to 3.40 mm and up to 20 atm, with some room. */
    @Test
    void allPrintedValuesAreInSightAndFillThePlot() {
        GrowthPlot plot = new GrowthPlot(BOTH, WORDS, 200, 130);
        assertNear(0, plot.area().left(), "pressures begin at zero");
        assertNear(20 * 1.06, plot.area().right(), "and go a little beyond the last");
        assertNear(2.90 - 0.068, plot.area().bottom(), "room below: 2 % of the largest diameter");
        assertNear(3.40 + 0.068, plot.area().top(), "room above");
        assertNear(195, plot.area().box().rightMm(), "room for the letters at the right");
    }

    @Test
    void wideRangesHaveEightHundredthsOfRoom() {
        GrowthPlot plot = new GrowthPlot(GrowthComparison.of(List.of(GrowthTest.balloon("wide", "8 atm", "14 atm",
                "6 atm", "1.00 mm", "14 atm", "3.00 mm"))), WORDS, 200, 130);
        assertNear(1 - 0.16, plot.area().bottom(), "below");
        assertNear(3 + 0.16, plot.area().top(), "above");
    }

    @Test
    void aCurveGoesThroughItsRowsUpToTheRatedBurstPressure() {
        GrowthPlot plot = new GrowthPlot(BOTH, WORDS, 200, 130);
        Drawn drawn = Drawn.of(plot.picture());
        Path curve = (Path) drawn.marks("growth:soft").get(0).element();
        double[][] corners = { { 6, 2.9 }, { 8, 3.0 }, { 12, 3.2 }, { 14, 3.4 } };
        List<Point> points = curve.segments().stream().map(Segment::points).map(p -> p.get(0)).toList();
        assertEquals(corners.length, points.size());
        for (int i = 0; i < corners.length; i++) {
            assertNear(plot.area().x(corners[i][0]), points.get(i).xMm(), "pressure");
            assertNear(plot.area().y(corners[i][1]), points.get(i).yMm(), "diameter");
        }
        for (int i = 0; i < 3; i++) {
            Mark row = drawn.marks("row:soft:" + i).get(0);
            assertTrue(row.element() instanceof Ellipse);
            assertNear(plot.area().x(corners[i][0]), row.box().centre().xMm(), "row");
            assertNear(plot.area().y(corners[i][1]), row.box().centre().yMm(), "row");
        }
        Drawn.Words letter = drawn.words("A");
        assertNear(plot.area().x(14) + 1.6, letter.box().xMm(), "the letter behind the end");
        assertNear(plot.area().y(3.4), letter.box().centre().yMm(), "half-way up");
    }

    @Test
    void signsStandRoundNominalAndRatedBurstPressure() {
        GrowthPlot plot = new GrowthPlot(BOTH, WORDS, 200, 130);
        Drawn drawn = Drawn.of(plot.picture());
        Mark nominal = drawn.marks("nominal:soft").get(0);
        assertNear(plot.area().x(8), nominal.box().centre().xMm(), "nominal");
        assertNear(plot.area().y(3.0), nominal.box().centre().yMm(), "nominal");
        assertNear(2.6, nominal.box().widthMm(), "nominal");
        assertNear(2.6, nominal.box().heightMm(), "nominal");
        Mark rated = drawn.marks("rated:soft").get(0);
        assertNear(plot.area().x(14), rated.box().xMm(), "rated burst");
        assertNear(plot.area().y(3.4), rated.box().centre().yMm(), "rated burst");
        assertNear(0, rated.box().widthMm(), "upright");
        assertNear(3.6, rated.box().heightMm(), "rated burst");
    }

    @Test
    void theLegendHasASignForEveryMeaning() {
        Drawn drawn = Drawn.of(GrowthPlot.picture(BOTH, WORDS, 200, 130));
        for (String text : List.of("A soft", "B hard", "printed in the table", "nominal pressure",
                "rated burst pressure: the end")) {
            Drawn.Words words = drawn.words(text);
            assertTrue(drawn.marks().stream().anyMatch(m -> m.box().rightMm() < words.box().xMm()
                    && m.box().xMm() > words.box().xMm() - 10
                    && Math.abs(m.box().centre().yMm() - words.box().centre().yMm()) < 0.05), "no sign beside " + text);
        }
        String bare = Drawn.of(GrowthPlot.picture(GrowthComparison.of(List.of(
                GrowthTest.balloon("bare", "8 atm", "14 atm"))), WORDS, 200, 130)).text();
        assertTrue(!bare.contains("printed in the table") && !bare.contains("A bare "), bare);
    }

    @Test
    void withoutAnyCurveThereIsAnEmptyPlot() {
        GrowthPlot plot = new GrowthPlot(GrowthComparison.of(List.of(GrowthTest.balloon("bare", "8 atm", "14 atm"))),
                WORDS, 200, 130);
        Laid.assertTidy(plot.picture());
        Laid.assertNumbersAlong(plot.picture(), plot.area(), 1);
        assertEquals(0, plot.area().bottom());
        assertNear(1.08, plot.area().top(), "a millimetre");
        assertNear(21.2, plot.area().right(), "20 atm");
        assertEquals("Growth curve of one balloon: A bare: no curve, its papers have no table that can be read",
                plot.picture().description());
    }

    @Test
    void theDescriptionTellsWhatIsStated() {
        assertEquals("Growth curves of 2 balloons: A soft: nominal 3.00 mm at 8 atm; rated burst 3.40 mm at 14 atm; "
                + "B hard: nominal 3.00 mm at 12 atm; rated burst 3.08 mm at 20 atm",
                GrowthPlot.picture(BOTH, WORDS, 200, 130).description());
    }

    @Test
    void whatIsNotStatedIsSaidNotToBe() {
        Device open = GrowthTest.balloon("open", Optional.empty(), Optional.empty(), "6 atm", "2.90 mm", "8 atm",
                "3.00 mm");
        Device beside = GrowthTest.balloon("beside", "3 atm", "20 atm", "6 atm", "2.90 mm", "8 atm", "3.00 mm");
        Device rod = SampleDevice.rod("rod", DeviceKind.GUIDEWIRE, "190 cm", "0.014 in").device();
        GrowthWords words = new GrowthWords(GrowthComparison.of(List.of(open, beside, rod, SOFT)), WORDS);
        assertEquals("A open: nominal unknown; rated burst unknown", words.pressures(0));
        assertEquals("B beside: nominal 3 atm, not in the table; rated burst 20 atm, not in the table",
                words.pressures(1));
        assertEquals(List.of("A: no rated burst pressure is stated; the curve ends with the table",
                "C rod: no curve, it has no balloon"), words.notes().subList(0, 2));
        assertEquals(3, words.notes().size());
        assertEquals(Optional.empty(), words.refusal(3));
        assertEquals("100 atm", words.pressure(Pressure.parse("100 atm")));
    }
}
