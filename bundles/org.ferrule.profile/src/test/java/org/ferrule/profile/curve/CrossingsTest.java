/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.profile.Compared;
import org.ferrule.profile.CurveCrossing;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static final SampleDevice EVEN = rod("even", DeviceKind.MICROCATHETER, "100 mm", "1 mm");

    @Test
    void tapersCrossWhereTheirLinesMeet() {
        List<CurveCrossing> crossings = crossings(EVEN, microcatheter().taper("cone", "0 mm", "100 mm", "0.8 mm",
                "1.3 mm"));
        assertEquals(1, crossings.size());
        assertEquals(length("40 mm"), crossings.get(0).crossing().station());
        assertEquals(1, crossings.get(0).largerBeyond());
    }

    @Test
    void stepsCrossAtTheStep() {
        List<CurveCrossing> crossings = crossings(EVEN, microcatheter().section("tip", "0 mm", "20 mm", "0.8 mm")
                .section("shaft", "20 mm", "100 mm", "1.2 mm"));
        assertEquals(List.of(length("20 mm")), crossings.stream().map(c -> c.crossing().station()).toList());
    }

    @Test
    void curvesThatOnlyTouchDoNotCross() {
        assertTrue(crossings(EVEN, microcatheter().section("tip", "0 mm", "20 mm", "0.8 mm")
                .section("middle", "20 mm", "40 mm", "1 mm").section("shaft", "40 mm", "100 mm", "0.9 mm")).isEmpty());
    }

    @Test
    void nothingIsSaidAcrossWhatIsUnknown() {
        assertTrue(crossings(EVEN, microcatheter().section("tip", "0 mm", "20 mm", "0.8 mm").section("shaft", "30 mm",
                "100 mm", "1.2 mm")).isEmpty());
    }

    @Test
    void aCrossingInsideTheIntervalsIsUncertain() {
        assertFalse(crossings(EVEN, microcatheter().section("tip", "0 mm", "20 mm", "0.8 mm").section("shaft", "20 mm",
                "100 mm", "1.2 mm")).get(0).crossing().isUncertain());
        assertTrue(crossings(EVEN, microcatheter().section("tip", "0 mm", "20 mm", "0.9 mm \u00b10.2").section("shaft",
                "20 mm", "100 mm", "1.2 mm")).get(0).crossing().isUncertain());
    }

    /** Sampled at every millimetre, the order changes as often as the crossings say, and where they say. */
    @Test
    void orderChangesAtCrossingsAndNowhereElse() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            SampleDevice first = any("first", random);
            SampleDevice second = any("second", random);
            var comparison = Compared.devices(first, second).compare();
            Curve a = comparison.devices().get(0).curves().orElseThrow().outer();
            Curve b = comparison.devices().get(1).curves().orElseThrow().outer();
            List<Length> found = comparison.crossings().stream().map(c -> c.crossing().station()).toList();
            int order = 0;
            Length last = Length.ZERO;
            for (int step = 0; step < 200; step++) {
                Length station = length("0.5 mm").times(step).plus(length("0.25 mm"));
                int here = order(a, b, station);
                Length from = last;
                boolean changed = order != 0 && here != 0 && here != order;
                long between = found.stream().filter(s -> s.compareTo(from) >= 0 && s.compareTo(station) <= 0).count();
                if (here != 0) {
                    assertEquals(changed, between % 2 == 1, "seed " + seed + ", before " + station);
                    order = here;
                    last = station;
                }
            }
        }
    }

    private static int order(Curve a, Curve b, Length station) {
        boolean known = a.at(station) instanceof Reading.Known && b.at(station) instanceof Reading.Known;
        return known ? ((Reading.Known) a.at(station)).figure().centre()
                .compareTo(((Reading.Known) b.at(station)).figure().centre()) : 0;
    }

    private static SampleDevice any(String id, Random random) {
        SampleDevice device = device(id, DeviceKind.MICROCATHETER).length("100 mm");
        for (int from = 0; from < 100; from += 20) {
            device.taper("part " + from, from + " mm", from + 20 + " mm", diameter(random), diameter(random));
        }
        return device;
    }

    private static String diameter(Random random) {
        return "1." + random.nextInt(8) + " mm";
    }

    private static SampleDevice microcatheter() {
        return device("other", DeviceKind.MICROCATHETER).length("100 mm");
    }

    private static List<CurveCrossing> crossings(SampleDevice first, SampleDevice second) {
        return Compared.devices(first, second).compare().crossings();
    }
}
