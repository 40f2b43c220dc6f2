/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.change.Replacement;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.fit.engineering.size.Flip;
import org.ferrule.fit.engineering.size.MovableSection;
import org.ferrule.fit.engineering.size.RequiredSize;
import org.ferrule.fit.engineering.size.Size;
import org.ferrule.fit.engineering.size.SizeSearch;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.profile.Drawn;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class RequiredPlotTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final FitSolver SOLVER = FitSolver.standard(List.of());
    private static final SampleDevice MICRO = rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");
    private static final List<FitQuestion> QUESTIONS = List.of(passage(MICRO, guide("narrow", "0.92 mm")).question(),
            passage(MICRO, guide("wide", "1.2 mm")).question(), passage(MICRO, guide("unstated", "?")).question());
    private static final RequiredSize REQUIRED = SizeSearch.of(
            MovableSection.of(new Place.Shaft(QUESTIONS.get(0).inner().device(), 0)), QUESTIONS, SOLVER);
    private static final RequiredLanes LANES = new RequiredLanes(REQUIRED, Phase.IN);

    /** With 0.025 mm required: fits up to 0.895 mm, tight up to 0.92 mm, then blocked. */
    @Test
    void aLaneHasTheVerdictsAlongTheDiameter() {
        PartnerLane narrow = LANES.lanes().get(0);
        assertEquals(Verdict.FITS, narrow.at(length("0.895 mm")));
        assertEquals(Verdict.TIGHT, narrow.at(length("0.9 mm")));
        assertEquals(Verdict.TIGHT, narrow.at(length("0.92 mm")));
        assertEquals(Verdict.BLOCKED, narrow.at(length("0.920001 mm")));
        assertEquals(Optional.of(length("0.895 mm")), LANES.limit(Verdict.FITS).or(() -> new RequiredLanes(
                SizeSearch.of(REQUIRED.section(), QUESTIONS.subList(0, 2), SOLVER), Phase.IN).limit(Verdict.FITS)));
    }

    /** A lane says what the solver says at both sides of every flip. */
    @Test
    void flipsAreThoseOfTheSolver() {
        for (PartnerLane lane : LANES.lanes()) {
            for (Flip flip : lane.sizes().flips()) {
                for (Size size : List.of(flip.last(), flip.first())) {
                    Length by = size.distal().minus(REQUIRED.section().printed().distal());
                    FitQuestion moved = Replacement.of(REQUIRED.section().place().device(),
                            REQUIRED.section().movedBy(by), lane.sizes().question().rules())
                            .in(lane.sizes().question());
                    assertEquals(SOLVER.answer(moved).in().verdict(), lane.at(size.distal()));
                }
            }
        }
    }

    @Test
    void movingTheDiameterTellsWhoFlips() {
        assertEquals(List.of("narrow"),
                LANES.changes(length("0.9 mm"), length("0.89 mm")).stream().map(c -> c.lane().name()).toList());
        String words = new RequiredWords(LANES, WORDS).chosen(length("0.89 mm"));
        assertEquals("At 0.8900 mm: 2 fits, 1 unknown. Other than at the printed diameter: narrow tight \u2192 fits.",
                words);
        assertTrue(new RequiredWords(LANES, WORDS).chosen(length("0.9 mm")).endsWith("As at the printed diameter."));
    }

    @Test
    void whatNeverFlipsSaysWhy() {
        assertEquals("unstated: unknown at every diameter; a figure or a length is missing elsewhere",
                new RequiredWords(LANES, WORDS).lane(LANES.lanes().get(2)));
    }

    @Test
    void lanesFlipsAndTheChosenDiameterCanBeFound() {
        RequiredPlot plot = new RequiredPlot(LANES, Optional.of(length("1.0 mm")), WORDS, 200, 80);
        Picture picture = plot.picture();
        List<String> ids = Drawn.ids(picture);
        assertTrue(ids.containsAll(List.of("lane:0", "lane:2", "flip:0:0", "flip:0:1", "printed", "chosen")),
                ids.toString());
        Point flip = new Point(plot.area().x(0.895), plot.area().box().yMm() + 1);
        assertTrue(picture.groupsAt(flip, 0.2).stream()
                .anyMatch(group -> group.frame().id().equals(Optional.of("flip:0:0"))));
        assertTrue(Drawn.texts(picture).contains("0.8950 mm"), Drawn.texts(picture).toString());
    }

    @Test
    void aLumenIsRoundedUp() {
        FitQuestion question = QUESTIONS.get(0);
        RequiredLanes bore = new RequiredLanes(SizeSearch.of(
                MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), 0)), List.of(question),
                SOLVER), Phase.IN);
        RequiredWords words = new RequiredWords(bore, ProfileWords.english(UnitPreferences.in(LengthUnit.INCH)));
        assertEquals(Optional.of(length("0.925 mm")), bore.limit(Verdict.FITS));
        assertEquals("0.03642 in", words.diameter(length("0.925 mm")));
        assertEquals("micro", bore.lanes().get(0).name());
    }

    @Test
    void wordsSayWhichWayAndWhetherAShaftOrALumenIsAsked() {
        RequiredWords in = new RequiredWords(LANES, WORDS);
        assertEquals("How thick may shaft of micro be? (going in)", in.title());
        assertEquals("diameter as printed, mm", in.axis());
        RequiredWords out = new RequiredWords(new RequiredLanes(REQUIRED, Phase.OUT), WORDS);
        assertEquals("How thick may shaft of micro be? (coming out)", out.title());
        assertTrue(out.note().startsWith("Coming out") && !in.note().startsWith("Coming out"));
        FitQuestion question = QUESTIONS.get(0);
        RequiredWords bore = new RequiredWords(new RequiredLanes(SizeSearch.of(
                MovableSection.of(new Place.Bore(question.outer().device(), question.lumen(), 0)), List.of(question),
                SOLVER), Phase.IN), WORDS);
        assertEquals("How wide must bore 1 of narrow be? (going in)", bore.title());
        assertEquals("all fit from 0.9250 mm", bore.limit(length("0.925 mm")));
        assertEquals("all fit up to 0.9250 mm", in.limit(length("0.925 mm")));
        assertEquals("micro: blocked, from 0.9000 mm on tight, tight, from 0.9250 mm on fits",
                bore.lane(new RequiredLanes(SizeSearch.of(MovableSection.of(new Place.Bore(question.outer().device(),
                        question.lumen(), 0)), List.of(question), SOLVER), Phase.IN).lanes().get(0)));
    }

    @Test
    void lanesAreThoseOfTheirPhase() {
        assertEquals(3, LANES.lanes().size());
        assertEquals(3, new RequiredLanes(REQUIRED, Phase.OUT).lanes().size());
        assertTrue(LANES.lanes().stream().allMatch(lane -> lane.sizes().phase() == Phase.IN));
        assertEquals(Optional.empty(), LANES.limit(Verdict.FITS), "one is unknown at every diameter");
    }

    @Test
    void sensitivityIsDrawnAsSortedBars() {
        Place place = new Place.Shaft(QUESTIONS.get(0).inner().device(), 0);
        Place other = new Place.Bore(QUESTIONS.get(0).outer().device(), QUESTIONS.get(0).lumen(), 0);
        Picture picture = SensitivityPlot.picture(List.of(new Influence(place, 1, 3, OptionalInt.of(2)),
                new Influence(other, 2, 0, OptionalInt.empty())), WORDS, 180);
        assertTrue(Drawn.ids(picture).containsAll(List.of("bar:0", "bar:1")));
        assertTrue(Drawn.texts(picture).contains("3") && !Drawn.texts(picture).contains("0.5"), "counts are whole");
        assertTrue(
                picture.description()
                        .contains("micro, shaft shaft: 0.9 mm: 3 change, 1 rest on it; measuring settles 2"),
                picture.description());
        assertTrue(Drawn.texts(SensitivityPlot.picture(List.of(), WORDS, 180))
                .contains("No verdict rests on any single figure."));
    }
}
