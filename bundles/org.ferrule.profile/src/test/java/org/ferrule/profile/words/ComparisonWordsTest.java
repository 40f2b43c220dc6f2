/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.words;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.devices;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.profile.Landmark;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Reading;
import org.ferrule.profile.table.Quantity;
import org.ferrule.profile.table.StiffnessJump;
import org.ferrule.profile.table.Value;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

/** What is said of a comparison, sentence by sentence. */
class ComparisonWordsTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final SampleDevice SMALL = balloon("small", "0.85 mm", "0.6 mm");
    private static final SampleDevice LARGE = balloon("large", "1.1 mm", "0.7 mm");

    private static String passage(SampleDevice device, SampleDevice outer) {
        ProfileComparison comparison = devices(device, SMALL).in(outer).compare();
        return new FindingWords(comparison, WORDS).passage(comparison.passages().get(0));
    }

    @Test
    void aStopSaysWhereHowNarrowAndByHowMuch() {
        assertEquals("A in L1: stops at its balloon, 4.0 mm from the distal tip, where the lumen is 1.00 mm wide; "
                + "0.10 mm too large", passage(LARGE, guide("guide", "1.0 mm")));
    }

    @Test
    void whatPassesSaysSo() {
        assertEquals("A in L1: passes, nominally and in the worst case", passage(LARGE, guide("guide", "1.2 mm")));
    }

    @Test
    void theWorstCaseIsToldWhereOnlyThatDoesNotPass() {
        SampleDevice wide = rod("wide", DeviceKind.MICROCATHETER, "135 cm", "0.95 mm ±0.1");
        assertEquals("A in L1: nominally passes; in the worst case its shaft, 0 cm from the distal tip, is 0.05 mm too "
                + "large", passage(wide, guide("guide", "1.0 mm")));
    }

    @Test
    void whereNoCentreIsStatedTheDeviceStopsEvenAtItsBest() {
        SampleDevice wide = rod("wide", DeviceKind.MICROCATHETER, "135 cm", "1.1..1.2 mm");
        String words = passage(wide, guide("guide", "1.0 mm"));
        assertEquals("A in L1: stops at its shaft, 0 cm from the distal tip, even at its best; 0.10 mm too large",
                words);
    }

    @Test
    void aMissingFigureIsSaidToBeMissing() {
        SampleDevice gap = device("gap", DeviceKind.MICROCATHETER).length("135 cm").section("", "5 mm", "135 cm",
                "0.8 mm");
        assertEquals("A in L1: unknown, a figure is missing", passage(gap, guide("guide", "1.0 mm")));
        SampleDevice worst = device("gap", DeviceKind.MICROCATHETER).length("135 cm").section("", "5 mm", "135 cm",
                "0.95 mm ±0.1");
        assertEquals("A in L1: unknown, a figure is missing; of what is known, in the worst case its unnamed section, "
                + "5.0 mm from the distal tip, is 0.05 mm too large", passage(worst, guide("guide", "1.0 mm")));
    }

    @Test
    void aLumenIsCalledBySignDeviceAndNarrowestDiameter() {
        SampleDevice tapered = device("tapered", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("main", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm")
                .taperedBore("0 mm", "100 cm", "1.4 mm", "1.2 mm")
                .lumen("side", Lumen.Use.WIRE, Lumen.Opening.HUB, "0 mm", "100 cm").bore("0 mm", "100 cm", "0.5 mm");
        ProfileComparison comparison = devices(SMALL, LARGE).in(guide("plain", "1.0..1.1 mm")).in(tapered)
                .in(guide("open", "?")).compare();
        FindingWords words = new FindingWords(comparison, WORDS);
        assertEquals(List.of("L1 plain: 1.05 mm", "L2 tapered main: 1.20 mm", "L3 open: inner diameter unknown"),
                List.of(words.shortLine(0), words.shortLine(1), words.shortLine(2)));
        assertEquals("L1 plain: narrowest inner diameter 1.05 mm (1.00..1.10, assumed)", words.line(0));
        assertEquals("L2 tapered main: narrowest inner diameter 1.20 mm (assumed exact)", words.line(1));
        assertEquals("L3 open: inner diameter unknown", words.line(2));
        ProfileComparison stated = devices(SMALL, LARGE).in(guide("stated", "1.2 mm ±0.05")).compare();
        assertEquals("L1 stated: narrowest inner diameter 1.20 mm (1.15..1.25)",
                new FindingWords(stated, WORDS).line(0));
    }

    @Test
    void crossingsTellWhichIsLargerFromWhereOn() {
        ProfileComparison steps = devices(rod("even", DeviceKind.MICROCATHETER, "135 cm", "0.95 mm"), LARGE).compare();
        assertEquals(List.of("B is larger than A from 4.0 mm proximal to the distal tip on",
                "A is larger than B from 2.3 cm proximal to the distal tip on"),
                new FindingWords(steps, WORDS).crossings());
        ProfileComparison near = devices(rod("even", DeviceKind.MICROCATHETER, "135 cm", "0.95 mm ±0.2"), LARGE)
                .compare();
        assertEquals(
                "B is larger than A from 4.0 mm proximal to the distal tip on; intervals overlap, single parts may "
                        + "differ",
                new FindingWords(near, WORDS).crossings().get(0));
        ProfileComparison none = devices(rod("thin", DeviceKind.MICROCATHETER, "135 cm", "0.3 mm"),
                rod("thick", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")).compare();
        assertEquals(List.of("No two outer diameters cross."), new FindingWords(none, WORDS).crossings());
    }

    @Test
    void stationsAreDistalAtOrProximalToTheLandmark() {
        Landmark port = Landmark.parse("exit port");
        assertEquals("1.2 cm distal to the exit port", WORDS.station(length("12 mm").negated(), port));
        assertEquals("at the exit port", WORDS.station(Length.ZERO, port));
        assertEquals("20.0 cm proximal to marker 2, counted from the tip",
                WORDS.station(length("20 cm"), Landmark.parse("marker 2")));
        assertEquals("end of rigid part 3", WORDS.landmark(Landmark.parse("rigid end 3")));
    }

    @Test
    void readingsAreRoundedInTheSafeDirection() {
        Figure figure = new Figure(length("0.8121 mm"), length("0.8233 mm"), length("0.8349 mm"), false);
        Reading known = new Reading.Known(figure, false, "shaft", SourceRef.NONE);
        assertEquals("0.83 mm (0.81..0.84)", WORDS.reading(known, Curve.Kind.OUTER));
        assertEquals("0.83 mm (0.81..0.84)", WORDS.reading(known, Curve.Kind.WITH_WIRE));
        assertEquals("0.82 mm (0.81..0.84)", WORDS.reading(known, Curve.Kind.INNER));
        assertEquals("0.82 mm (0.81..0.84, assumed)",
                WORDS.reading(new Reading.Known(figure, true, "shaft", SourceRef.NONE), Curve.Kind.INNER));
        assertEquals("0.80 mm", WORDS.reading(new Reading.Known(Figure.exactly(length("0.8 mm")), false, "shaft",
                SourceRef.NONE), Curve.Kind.OUTER));
        assertEquals("unknown", WORDS.reading(new Reading.Unknown("", List.of()), Curve.Kind.OUTER));
        assertEquals("\u2013", WORDS.reading(new Reading.Beyond(), Curve.Kind.OUTER));
    }

    @Test
    void marksAreCalledByWhatTheyAre() {
        assertEquals("rigid: unnamed section", WORDS.mark(new Mark(Mark.Kind.RIGID, "", Length.ZERO, length("1 mm"))));
        assertEquals("rigid: ring", WORDS.mark(new Mark(Mark.Kind.RIGID, "ring", Length.ZERO, length("1 mm"))));
        assertEquals("marker 2", WORDS.mark(new Mark(Mark.Kind.MARKER, "2", Length.ZERO, length("1 mm"))));
    }

    @Test
    void stepsOfStiffnessAreToldOneByOne() {
        StiffnessJump jump = new StiffnessJump(length("3 cm"), "tip", "", 4.26);
        assertEquals("tip to unnamed section times 4.3 at 3.0 cm",
                WORDS.value(new Value.Steps(List.of(jump), true)));
        assertEquals("tip to unnamed section times 4.3 at 3.0 cm; stiffness stated in part",
                WORDS.value(new Value.Steps(List.of(jump), false)));
        assertEquals("none", WORDS.value(new Value.Steps(List.of(), true)));
        assertEquals("none known", WORDS.value(new Value.Steps(List.of(), false)));
    }

    @Test
    void whatDiffersIsToldInTheUnitOfTheRow() {
        ProfileComparison comparison = devices(SMALL, rod("catheter", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"))
                .compare();
        List<String> spreads = comparison.differences().rows().stream()
                .map(row -> WORDS.quantity(row.quantity()) + " " + WORDS.spread(row)).toList();
        assertTrue(spreads.contains("Effective length 7.0 cm") && spreads.contains("Diameter at the tip 0.47 mm")
                && spreads.contains("Crossing profile \u2013"), spreads.toString());
    }

    @Test
    void aLumenOfWhichNoCentreIsStatedIsAssumedAsInTheTableOfDifferences() {
        SampleDevice range = guide("range", "1.0..1.1 mm");
        ProfileComparison comparison = devices(range, SMALL).in(range).compare();
        assertEquals("L1 range: narrowest inner diameter 1.05 mm (1.00..1.10, assumed)",
                new FindingWords(comparison, WORDS).line(0));
        assertEquals("1.05 mm (1.00..1.10, assumed)", comparison.differences().rows().stream()
                .filter(row -> row.quantity() == Quantity.NARROWEST_LUMEN).map(row -> WORDS.value(row.values().get(0)))
                .findFirst().orElseThrow());
    }

    @Test
    void edgesOfIntervalsAreSaidToBeAssumed() {
        ProfileComparison comparison = devices(SMALL, LARGE).in(guide("guide", "1.2 mm")).under(TestRules.usual())
                .compare();
        assertTrue(new FindingWords(comparison, WORDS).line(0).endsWith(", assumed)"),
                new FindingWords(comparison, WORDS).line(0));
    }
}
