/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.plot;

import static org.ferrule.fit.sample.SampleDevice.balloon;
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
