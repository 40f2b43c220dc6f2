/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.profile.Compared.length;
import static org.ferrule.profile.Laid.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Mark;
import org.ferrule.chart.Drawn.Words;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.SizeSearch;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Box;
import org.ferrule.picture.Path;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Rect;
import org.ferrule.profile.Laid;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the parts of the plot of a required diameter lie. */
class RequiredLayoutTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final FitSolver SOLVER = FitSolver.standard(List.of());

    /** A microcatheter of 0.9 mm in guides from 0.92 mm upwards, each 0.1 mm wider than the one before. */
    private static RequiredLanes lanes(int guides) {
        SampleDevice micro = rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");
        List<FitQuestion> questions = new ArrayList<>();
        for (int i = 0; i < guides; i++) {
            questions.add(passage(micro, guide("guide " + i, (i * 10 + 92) / 100.0 + " mm")).question());
        }
        return new RequiredLanes(SizeSearch.of(
                MovableSection.of(new Place.Shaft(questions.get(0).inner().device(), 0)), questions, SOLVER), Phase.IN);
    }

    private static RequiredPlot plot(int guides, double widthMm, double heightMm) {
        return new RequiredPlot(lanes(guides), Optional.empty(), WORDS, widthMm, heightMm);
    }

    @ParameterizedTest
    @CsvSource({ "1, 200, 60", "3, 200, 80", "3, 90, 55", "8, 140, 120", "8, 260, 40" })
    void wordsStandApartAtEverySize(int guides, double widthMm, double heightMm) {
        RequiredPlot plot = plot(guides, widthMm, heightMm);
        Laid.assertTidy(plot.picture());
        Laid.assertNumbersAlong(plot.picture(), plot.area(), 1);
    }

    @Test
    void thePlotTakesThePaperThatItIsGiven() {
        Picture picture = plot(2, 200, 80).picture();
        assertEquals(200, picture.widthMm());
        assertEquals(80, picture.heightMm());
        assertNear(198, plot(2, 200, 80).area().box().rightMm(), "right end of the lanes");
        assertNear(62, plot(2, 200, 80).area().box().xMm(), "names take three tenths of the width");
    }

    @Test
    void lanesShareTheHeightWithinReason() {
        assertNear(11, plot(1, 200, 200).area().box().heightMm(), "no lane is higher than 11 mm");
        RequiredPlot crowded = plot(8, 200, 40);
        assertNear(8 * 5, crowded.area().box().heightMm(), "no lane is lower than 5 mm");
        assertTrue(crowded.picture().heightMm() > 40, "the paper grows instead");
        double lane = plot(8, 200, 100).area().box().heightMm() / 8;
        assertTrue(lane > 5.5 && lane < 10.5, "height of a lane: " + lane);
    }

    @Test
    void aLaneIsCoveredByItsVerdictsFromEndToEnd() {
        RequiredPlot plot = plot(3, 200, 80);
        Drawn drawn = Drawn.of(plot.picture());
        double laneMm = plot.area().box().heightMm() / 3;
        for (int i = 0; i < 3; i++) {
            PartnerLane lane = lanes(3).lanes().get(i);
            List<Mark> bands = drawn.marks("lane:" + i).stream()
                    .filter(m -> m.element() instanceof Rect && m.box().heightMm() > 5).toList();
            assertEquals(3, bands.size());
            double from = plot.area().box().xMm();
            for (int j = 0; j < bands.size(); j++) {
                Box box = bands.get(j).box();
                assertNear(from, box.xMm(), "bands touch");
                assertNear(plot.area().box().yMm() + i * laneMm + 0.6, box.yMm(), "a gap above");
                assertNear(laneMm - 1.2, box.heightMm(), "and below");
                assertEquals(lane.look(lane.ranges().get(j).verdict()).tone(Scheme.LIGHT).fill(),
                        ((Rect) bands.get(j).element()).style().fill());
                from = box.rightMm();
            }
            assertNear(plot.area().box().rightMm(), from, "the last band goes to the right end");
            Words name = drawn.words("guide " + i);
            assertNear(plot.area().box().yMm() + (i + 0.5) * laneMm, name.box().centre().yMm(), "name in the middle");
            assertNear(2, name.box().xMm(), "names at the left");
        }
    }

    @Test
    void flipsAreLinesThroughTheirLanesWithTheirDiameterAbove() {
        RequiredPlot plot = plot(3, 200, 80);
        Drawn drawn = Drawn.of(plot.picture());
        double laneMm = plot.area().box().heightMm() / 3;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 2; j++) {
                Length last = lanes(3).lanes().get(i).sizes().flips().get(j).last().distal();
                Box line = drawn.marks("flip:" + i + ":" + j).get(0).box();
                assertNear(plot.area().x(last.mm()), line.xMm(), "place of the flip");
                assertNear(0, line.widthMm(), "upright");
                assertNear(plot.area().box().yMm() + i * laneMm, line.yMm(), "upper end");
                assertNear(laneMm, line.heightMm(), "height");
            }
        }
        Words first = drawn.words("0.8950 mm");
        assertNear(plot.area().x(0.895), first.box().centre().xMm(), "the first value over its flip");
        assertTrue(first.box().bottomMm() < plot.area().box().yMm() - 1, "above the lanes");
        assertTrue(drawn.words().stream().noneMatch(w -> w.text().equals("0.9200 mm")), "no room beside the first");
    }

    @Test
    void aWideBandSaysItsVerdictWithItsShapeANarrowOneOnlyHasItsShape() {
        RequiredPlot plot = plot(1, 200, 80);
        Drawn drawn = Drawn.of(plot.picture());
        List<Mark> marks = drawn.marks("lane:0");
        Box fits = marks.get(0).box();
        Words word = drawn.words("fits");
        assertTrue(word.box().xMm() > fits.xMm() && word.box().rightMm() < fits.rightMm(), "inside its band");
        assertNear(fits.centre().yMm(), word.box().centre().yMm(), "half-way up");
        List<Mark> shape = marks.stream().skip(1).takeWhile(m -> !(m.element() instanceof Rect r && r.box().equals(
                marks.get(0).box()))).filter(m -> m.box().rightMm() < word.box().xMm()).toList();
        assertFalse(shape.isEmpty(), "a shape to the left of the word");
        double left = shape.stream().mapToDouble(m -> m.box().xMm()).min().orElseThrow();
        assertEquals(fits.centre().xMm(), (left + word.box().rightMm()) / 2, 0.6, "both in the middle of the band");
        RequiredPlot narrow = plot(1, 62, 80);
        assertTrue(Drawn.of(narrow.picture()).words().stream().noneMatch(w -> w.text().equals("tight")),
                "no room for a word");
    }

    @Test
    void linesStandAtTheLimitThePrintedAndTheChosenDiameter() {
        RequiredPlot plot = new RequiredPlot(lanes(3), Optional.of(length("1.3 mm")), WORDS, 200, 80);
        Drawn drawn = Drawn.of(plot.picture());
        Box lanes = plot.area().box();
        Box limit = drawn.marks("limit").get(0).box();
        assertNear(plot.area().x(0.895), limit.xMm(), "all fit up to there");
        assertNear(lanes.yMm() - 1, limit.yMm(), "limit");
        assertNear(lanes.bottomMm(), limit.bottomMm(), "limit");
        Box printed = drawn.marks("printed").get(0).box();
        assertNear(plot.area().x(0.9), printed.xMm(), "printed");
        assertNear(lanes.yMm() - 1, printed.yMm(), "printed");
        assertNear(lanes.bottomMm() + 1, printed.bottomMm(), "printed");
        Box chosen = drawn.marks("chosen").get(0).box();
        assertNear(plot.area().x(1.3), chosen.xMm(), "chosen");
        assertNear(lanes.yMm() - 1, chosen.yMm(), "chosen");
        assertNear(lanes.bottomMm() + 1, chosen.bottomMm(), "chosen");
        Mark arrow = drawn.marks("chosen").get(1);
        assertTrue(arrow.element() instanceof Path);
        assertNear(chosen.xMm(), arrow.box().centre().xMm(), "arrow below the line");
        assertNear(lanes.bottomMm() + 0.2, arrow.box().yMm(), "arrow");
        assertNear(2.4, arrow.box().widthMm(), "arrow");
        assertNear(2, arrow.box().heightMm(), "arrow");
        assertTrue(plot.area().right() >= 1.3 && plot.area().left() <= 0.895, "the chosen diameter is in sight");
        assertNear(1.3, new RequiredPlot(lanes(1), Optional.of(length("1.3 mm")), WORDS, 200, 80).area().right(),
                "the axis goes as far as the chosen diameter");
        assertNear(0.2, new RequiredPlot(lanes(1), Optional.of(length("0.2 mm")), WORDS, 200, 80).area().left(),
                "also where it is small");
        Words label = drawn.words("all fit up to 0.8950 mm");
        assertTrue(label.box().bottomMm() < drawn.words("0.8950 mm").box().yMm(), "above the values of the flips");
        assertTrue(label.box().yMm() > drawn.words(new RequiredWords(lanes(3), WORDS).title()).box().bottomMm());
    }

    @Test
    void thePrintedDiameterIsNamedWhereTheLimitLeavesRoom() {
        RequiredLanes far = new RequiredLanes(SizeSearch.of(MovableSection.of(new Place.Shaft(
                rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.5 mm").device(), 0)),
                List.of(passage(rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.5 mm"), guide("wide", "1.5 mm"))
                        .question()),
                SOLVER), Phase.IN);
        RequiredPlot plot = new RequiredPlot(far, Optional.empty(), WORDS, 200, 80);
        Drawn drawn = Drawn.of(plot.picture());
        assertNear(plot.area().x(0.5), drawn.words("printed 0.5 mm").box().centre().xMm(), "over its line");
        assertNear(drawn.words("all fit up to 1.475 mm".replace("1.475", "1.4750")).box().bottomMm(),
                drawn.words("printed 0.5 mm").box().bottomMm(), "in one row");
    }

    @Test
    void theNoteIsLeftOutOfALowPlot() {
        assertTrue(Drawn.of(plot(1, 200, 55).picture()).text().contains("moves along with the printed diameter"));
        assertFalse(Drawn.of(plot(1, 200, 54).picture()).text().contains("moves along with the printed diameter"));
        List<Words> words = Drawn.of(plot(1, 200, 80).picture()).words();
        assertTrue(words.get(words.size() - 1).box().bottomMm() > 80 - 4, "it stands at the lower edge");
    }

    @Test
    void lanesSayTheirFlipsAsTooltipAndDescription() {
        RequiredPlot plot = plot(2, 200, 80);
        String first = "guide 0: fits up to 0.8950 mm, then tight, tight up to 0.9200 mm, then blocked";
        assertTrue(plot.picture().description().startsWith(first + "; guide 1: "), plot.picture().description());
        assertEquals(Optional.of(first), Drawn.of(plot.picture()).groups().stream()
                .filter(g -> g.id().equals("lane:0")).findFirst().orElseThrow().group().frame().tooltip());
    }
}
