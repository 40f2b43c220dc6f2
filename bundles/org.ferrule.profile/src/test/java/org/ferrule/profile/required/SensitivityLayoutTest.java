/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.required;

import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Laid.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

import org.ferrule.chart.Drawn;
import org.ferrule.chart.Drawn.Mark;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.engineering.change.Place;
import org.ferrule.fit.engineering.sensitivity.Influence;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.picture.Picture;
import org.ferrule.profile.Laid;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the bars of a ranking lie, and what it calls the places. */
class SensitivityLayoutTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final Device MICRO = rod("micro", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
            .takesWire("0.014 in").device();
    private static final Place SHAFT = new Place.Shaft(MICRO, 0);

    private static Influence influence(Place place, int decides, int changes) {
        return new Influence(place, decides, changes, OptionalInt.empty());
    }

    private static Picture picture(Influence... ranked) {
        return SensitivityPlot.picture(List.of(ranked), WORDS, 180);
    }

    @ParameterizedTest
    @CsvSource({ "0, 180", "1, 180", "5, 100", "12, 260" })
    void wordsStandApartHoweverMany(int count, double widthMm) {
        List<Influence> ranked = new ArrayList<>();
        IntStream.range(0, count).forEach(i -> ranked.add(influence(SHAFT, count - i, 2 * (count - i))));
        Laid.assertTidy(SensitivityPlot.picture(ranked, WORDS, widthMm));
    }

    @Test
    void barsAreAsLongAsTheirCounts() {
        Drawn drawn = Drawn.of(picture(influence(SHAFT, 2, 8), influence(SHAFT, 4, 0), influence(SHAFT, 0, 2)));
        List<Mark> first = drawn.marks("bar:0");
        double unit = first.get(0).box().widthMm() / 8;
        assertEquals(2, first.size());
        assertNear(2 * unit, first.get(1).box().widthMm(), "rest on it");
        assertEquals(1, drawn.marks("bar:1").size(), "nothing changes");
        assertNear(4 * unit, drawn.marks("bar:1").get(0).box().widthMm(), "rest on it");
        assertEquals(1, drawn.marks("bar:2").size(), "nothing rests on it");
        assertNear(2 * unit, drawn.marks("bar:2").get(0).box().widthMm(), "change");
        drawn.marks().stream().filter(m -> m.group().startsWith("bar:"))
                .forEach(m -> assertNear(2 + 180 * 0.46, m.box().xMm(), "all begin at the axis"));
        assertTrue(first.get(0).box().rightMm() < 175 && first.get(0).box().rightMm() > 165,
                "the longest nearly fills");
    }

    @Test
    void barsOfARowLieOneAboveTheOtherBesideItsNames() {
        Drawn drawn = Drawn.of(picture(influence(SHAFT, 2, 8), influence(SHAFT, 4, 3)));
        for (int i = 0; i < 2; i++) {
            List<Mark> bars = drawn.marks("bar:" + i);
            String group = "bar:" + i;
            List<Drawn.Words> names = drawn.words().stream().filter(w -> w.group().equals(group)).toList();
            assertNear(2.4, bars.get(0).box().heightMm(), "height");
            assertNear(bars.get(0).box().bottomMm() + 0.4, bars.get(1).box().yMm(), "0.4 mm apart");
            double middle = (bars.get(0).box().yMm() + bars.get(1).box().bottomMm()) / 2;
            assertEquals(List.of("micro", "shaft shaft: 0.9 mm"), names.stream().map(Drawn.Words::text).toList());
            double between = (names.get(0).box().centre().yMm() + names.get(1).box().centre().yMm()) / 2;
            assertNear(middle, between, "names beside their bars");
            names.forEach(name -> assertNear(2, name.box().xMm(), "at the left"));
        }
        assertNear(7.5, drawn.marks("bar:1").get(0).box().yMm() - drawn.marks("bar:0").get(0).box().yMm(), "row");
    }

    @Test
    void countsAreNumberedInWholeSteps() {
        SensitivityPlot plot = new SensitivityPlot(List.of(influence(SHAFT, 1, 2)), WORDS, 180);
        List<String> numbers = Drawn.of(plot.picture()).words().stream().map(Drawn.Words::text)
                .filter(text -> text.matches("[0-9.]+")).toList();
        assertEquals(List.of("0", "1", "2"), numbers);
    }

    @Test
    void theRankingIsAsHighAsItsRows() {
        double one = picture(influence(SHAFT, 1, 1)).heightMm();
        assertNear(one, picture().heightMm(), "nothing takes one row");
        assertNear(one + 2 * 7.5, picture(influence(SHAFT, 3, 3), influence(SHAFT, 2, 2), influence(SHAFT, 1, 1))
                .heightMm(), "two rows more");
    }

    @Test
    void longNamesAreShortenedToTheirColumn() {
        SampleDevice longNamed = rod("a device with a name that goes on and on and on beyond all that is usual",
                DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");
        Drawn drawn = Drawn.of(SensitivityPlot.picture(List.of(influence(new Place.Shaft(longNamed.device(), 0), 1, 1)),
                WORDS, 100));
        drawn.words().stream().filter(w -> w.group().equals("bar:0")).forEach(
                w -> assertTrue(w.box().rightMm() <= 2 + 46 - 1.9, w::toString));
    }

    @Test
    void everyPlaceIsCalledByWhatItIs() {
        Device guide = guide("guide", "1.2 mm").device();
        Device nameless = new Device("id-7", "", MICRO.kind(), MICRO.size(), MICRO.effectiveLength(), MICRO.takesWire(),
                MICRO.sections(), MICRO.lumens(), MICRO.deploys(), MICRO.claims(), MICRO.parts());
        Device gap = rod("gap", DeviceKind.MICROCATHETER, "135 cm", "?").device();
        String words = picture(influence(new Place.Bore(guide, guide.lumens().get(0), 0), 1, 1),
                influence(new Place.Wire(MICRO), 1, 1), influence(new Place.Statement(MICRO, Optional.empty()), 1, 1),
                influence(new Place.Shaft(nameless, 0), 1, 1),
                new Influence(new Place.Shaft(gap, 0), 1, 1, OptionalInt.of(3))).description();
        assertEquals("guide, lumen bore 1: 1.2 mm: 1 change, 1 rest on it; "
                + "micro, wire beside: 0.014 in: 1 change, 1 rest on it; "
                + "micro, statement: 0.014 in: 1 change, 1 rest on it; "
                + "id-7, shaft shaft: 0.9 mm: 1 change, 1 rest on it; "
                + "gap, shaft shaft: not stated: 1 change, 1 rest on it; measuring settles 3", words);
        assertTrue(Drawn.of(picture(influence(new Place.Shaft(nameless, 0), 1, 1))).text("bar:0").startsWith("id-7"));
    }
}
