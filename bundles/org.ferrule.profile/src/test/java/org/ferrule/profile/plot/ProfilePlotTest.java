/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.profile.Compared.devices;
import static org.ferrule.profile.Compared.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.picture.Group;
import org.ferrule.picture.Point;
import org.ferrule.profile.Drawn;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;

class ProfilePlotTest {
    private static final ProfileWords WORDS = ProfileWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE));
    private static final SampleDevice SMALL = balloon("small", "0.85 mm", "0.6 mm");
    private static final SampleDevice LARGE = balloon("large", "1.1 mm", "0.7 mm");

    @Test
    void stationsAndPlacesOnThePaperAreInverse() {
        ProfileComparison comparison = devices(SMALL, LARGE).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.distal(comparison), WORDS, 240, 150);
        assertEquals(123.4, plot.station(plot.xMm(length("123.4 mm"))).mm(), 1e-6);
        assertEquals(plot.area().box().xMm(), plot.xMm(View.distal(comparison).from()), 1e-9);
        assertEquals(plot.area().box().rightMm(), plot.xMm(View.distal(comparison).to()), 1e-9);
    }

    @Test
    void curvesCanBeFoundAtTheirDiameters() {
        ProfileComparison comparison = devices(SMALL, LARGE).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.distal(comparison), WORDS, 240, 150);
        Point balloon = new Point(plot.xMm(length("12 mm")), plot.area().y(1.1));
        assertTrue(ids(plot.picture().groupsAt(balloon, 0.3)).contains("curve:large:outer"));
    }

    @Test
    void firstContactIsMarkedOnTheCurve() {
        ProfileComparison comparison = devices(SMALL, LARGE).in(guide("guide", "1.0 mm")).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.distal(comparison), WORDS, 240, 150);
        Point contact = new Point(plot.xMm(length("4 mm")), plot.area().y(1.1));
        assertTrue(ids(plot.picture().groupsAt(contact, 0.3)).contains("contact:large:L1:stop"));
        assertTrue(Drawn.ids(plot.picture()).contains("line:L1"));
    }

    @Test
    void bandsAndLumensCanBeLeftOut() {
        ProfileComparison comparison = devices(SMALL, LARGE).under(TestRules.usual()).compare();
        View view = View.distal(comparison);
        List<String> with = Drawn.ids(ProfilePlot.picture(comparison, view, WORDS, 240, 150));
        assertTrue(with.contains("band:small") && with.contains("curve:small:inner:wire"));
        List<String> without = Drawn.ids(ProfilePlot
                .picture(comparison, view.withBands(false).withLumens(false), WORDS, 240, 150));
        assertFalse(without.contains("band:small") || without.contains("curve:small:inner:wire"));
    }

    @Test
    void legendNamesEveryDeviceAndUnits() {
        ProfileComparison comparison = devices(SMALL, rod("plain", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"))
                .from("exit port").compare();
        List<String> texts = Drawn.texts(ProfilePlot.picture(comparison, View.whole(comparison), WORDS, 240, 150));
        assertTrue(texts.contains("A small") && texts.contains("B plain"));
        assertTrue(texts.contains("diameter, mm"));
        assertTrue(texts.contains("B plain: not drawn, it has no exit port or nobody states where"), texts.toString());
    }

    @Test
    void inchesAreNumberedInInches() {
        ProfileComparison comparison = devices(SMALL, LARGE).compare();
        List<String> texts = Drawn.texts(ProfilePlot.picture(comparison, View.whole(comparison),
                ProfileWords.english(UnitPreferences.in(LengthUnit.INCH)), 240, 150));
        assertTrue(texts.contains("diameter, in") && texts.contains("0.010"), texts.toString());
    }

    @Test
    void eightDevicesHaveRoom() {
        SampleDevice[] eight = IntStream.range(0, 8).mapToObj(i -> balloon("b" + i, "0." + (80 + i) + " mm", "0.6 mm"))
                .toArray(SampleDevice[]::new);
        ProfileComparison comparison = devices(eight).compare();
        ProfilePlot plot = new ProfilePlot(comparison, View.distal(comparison), WORDS, 180, 140);
        assertTrue(plot.area().box().heightMm() > 40, "height of the plot: " + plot.area().box().heightMm());
    }

    @Test
    void zoomKeepsTheStationInItsPlace() {
        ProfileComparison comparison = devices(SMALL, LARGE).compare();
        View view = View.distal(comparison);
        View closer = view.zoomed(length("20 mm"), 50);
        ProfilePlot before = new ProfilePlot(comparison, view, WORDS, 240, 150);
        ProfilePlot after = new ProfilePlot(comparison, closer, WORDS, 240, 150);
        assertEquals(before.xMm(length("20 mm")), after.xMm(length("20 mm")), 0.01);
        assertEquals(view.length().mm() / 2, closer.length().mm(), 1e-5);
        assertEquals(view.moved(length("1 cm")).from(), view.from().plus(length("1 cm")));
        assertThrows(IllegalArgumentException.class,
                () -> new View(view.from(), view.from(), Optional.empty(), true, true));
    }

    /** The last event that tells devices apart is 5 mm from the right end, and there is some room at both ends. */
    @Test
    void theDistalViewGoesUpToTheLastEvent() {
        SampleDevice even = rod("even", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm");
        SampleDevice other = rod("other", DeviceKind.MICROCATHETER, "135 cm", "0.8 mm");
        SampleDevice bulge = device("bulge", DeviceKind.MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "2 cm", "0.7 mm").section("bulge", "2 cm", "3 cm", "0.95 mm")
                .section("shaft", "3 cm", "135 cm", "0.85 mm");
        assertEquals(length("25 mm"), seen(devices(rod("thick", DeviceKind.MICROCATHETER, "135 cm", "1 mm"), bulge)
                .compare()), "the largest part");
        assertEquals(length("35 mm"), seen(devices(even, bulge).compare()), "the last crossing");
        SampleDevice ring = rod("ring", DeviceKind.MICROCATHETER, "135 cm", "0.8 mm").section("ring", "20 cm", "21 cm",
                "0.7 mm").rigid();
        assertEquals(length("215 mm"), seen(devices(ring, even).compare()), "the end of a rigid part");
        SampleDevice wide = device("wide", DeviceKind.MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "10 cm", "0.95 mm").section("shaft", "10 cm", "135 cm", "0.93 mm ±0.1");
        assertEquals(length("105 mm"), seen(devices(wide, other).in(guide("guide", "1.0 mm")).compare()),
                "the first contact in the worst case");
        SampleDevice stopped = device("stopped", DeviceKind.MICROCATHETER).length("135 cm")
                .section("tip", "0 mm", "10 cm", "1.3 mm").section("shaft", "10 cm", "135 cm", "1.25 mm");
        assertEquals(length("5 mm"), seen(devices(stopped, other).in(guide("guide", "1.28 mm")).compare()),
                "where it stops");
    }

    /** The stations in sight without the room of four hundredths at both ends. */
    private static Length seen(ProfileComparison comparison) {
        return View.distal(comparison).length().times(100).dividedBy(108);
    }

    @Test
    void everythingIsInSightWhereTheLastEventIsFarProximal() {
        SampleDevice late = rod("late", DeviceKind.MICROCATHETER, "100 cm", "0.8 mm").section("ring", "60 cm", "61 cm",
                "0.7 mm").rigid();
        ProfileComparison comparison = devices(late, rod("even", DeviceKind.MICROCATHETER, "100 cm", "0.9 mm"))
                .compare();
        assertEquals(View.whole(comparison), View.distal(comparison));
        assertEquals(length("1 m"), seen(comparison));
    }

    @Test
    void aViewShowsAHundredthOfAMillimetreAtLeast() {
        ProfileComparison comparison = devices(SMALL, LARGE).compare();
        View least = View.whole(comparison).along(length("0 mm"), View.LEAST);
        assertEquals(View.LEAST, least.length());
        assertEquals(least, least.zoomed(length("0 mm"), 50), "no closer than that");
        assertEquals(View.LEAST, new View.Diameters(length("1 mm"), length("1.01 mm")).high()
                .minus(length("1 mm")));
        assertThrows(IllegalArgumentException.class, () -> new View.Diameters(length("1 mm"), length("1.009 mm")));
    }

    @Test
    void roundNumbersStandOnAxes() {
        assertEquals(0.2, Axes.step(1.6, 10), 1e-12);
        assertEquals(10, Axes.step(100, 10), 1e-12);
        assertEquals(0.05, Axes.step(0.31, 10), 1e-12);
    }

    private static List<String> ids(List<Group> groups) {
        return groups.stream().flatMap(group -> group.frame().id().stream()).toList();
    }
}
