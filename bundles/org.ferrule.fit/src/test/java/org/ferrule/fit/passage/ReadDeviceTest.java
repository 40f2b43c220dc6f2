/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.evidence.SharedSection.Part;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** A device as it is read: its outline with the wire beside it, its shaft alone, what of it cannot bend. */
class ReadDeviceTest {
    private static final TestRules RULES = TestRules.exact().growth("1.1", "1.25", "1.3");

    private static ReadDevice read(SampleDevice device) {
        return ReadDevice.of(device.device(), RULES.rules());
    }

    private static List<String> centres(List<Stretch> stretches) {
        return stretches.stream().map(s -> s.from().mm() / 10 + ".." + s.to().mm() / 10 + " cm: "
                + s.diameter().map(t -> t.start().centre().mm() + " mm").orElse("?")).toList();
    }

    @Test
    void aWireThatLeavesWithinASectionLiesBesideItsRestAlone() {
        ReadDevice device = read(rod("b", DeviceKind.BALLOON_CATHETER, "140 cm", "0.9 mm").takesWire("0.4 mm")
                .sidePort("25 cm", "0.42 mm"));
        assertEquals(List.of("0.0..25.0 cm: 0.9 mm", "25.0..140.0 cm: 1.3 mm"), centres(device.outline(Phase.IN)));
        assertEquals(List.of("0.0..140.0 cm: 0.9 mm"), centres(device.shaft(Phase.IN)));
    }

    @Test
    void theWireOfAnExtensionLiesBesideItsPushRod() {
        ReadDevice extension = read(device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm").takesWire("0.4 mm")
                .section("tube", "0 cm", "25 cm", "1.7 mm").section("push rod", "25 cm", "150 cm", "0.5 mm")
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm")
                .bore("0 cm", "25 cm", "1.5 mm"));
        assertEquals(List.of("0.0..25.0 cm: 1.7 mm", "25.0..150.0 cm: 0.9 mm"), centres(extension.outline(Phase.IN)));
        assertEquals(List.of("0.0..25.0 cm: 1.7 mm", "25.0..150.0 cm: 0.5 mm"), centres(extension.shaft(Phase.IN)));
    }

    @Test
    void useChangesOutlineShaftAndRigidParts() {
        ReadDevice device = read(device("b", DeviceKind.BALLOON_CATHETER).length("140 cm").takesWire("0.4 mm")
                .folded("balloon", "0 cm", "2 cm", "0.8 mm").rigid().section("shaft", "2 cm", "140 cm", "0.6 mm")
                .sidePort("25 cm", "0.42 mm"));
        assertEquals("0.0..2.0 cm: 0.8 mm", centres(device.outline(Phase.IN)).get(0));
        assertEquals("0.0..2.0 cm: 1.0 mm", centres(device.outline(Phase.OUT)).get(0));
        assertEquals("0.0..2.0 cm: 0.8 mm", centres(device.shaft(Phase.IN)).get(0));
        assertEquals("0.0..2.0 cm: 1.0 mm", centres(device.shaft(Phase.OUT)).get(0));
        assertEquals(List.of("0.0..2.0 cm: 0.8 mm"), centres(device.rigid(Phase.IN)));
        assertEquals(List.of("0.0..2.0 cm: 1.0 mm"), centres(device.rigid(Phase.OUT)));
    }

    @Test
    void aDeviceWhoseWireStaysInsideIsItsShaft() {
        ReadDevice device = read(rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").overTheWire("135 cm", "0.4 mm")
                .takesWire("0.36 mm"));
        assertEquals(List.of("0.0..135.0 cm: 0.9 mm"), centres(device.outline(Phase.OUT)));
        assertEquals(device.outline(Phase.IN), device.shaft(Phase.IN));
        assertEquals(device.outline(Phase.OUT), device.shaft(Phase.OUT));
    }

    @Test
    void sectionsOfALumenAreReadFromItsEntryWhateverTheirOrder() {
        SampleDevice guide = device("g", DeviceKind.GUIDE_CATHETER).length("100 cm")
                .lumen("main", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "100 cm").bore("60 cm", "100 cm", "1.4 mm")
                .bore("0 cm", "50 cm", "1.8 mm");
        assertEquals(List.of("0.0..50.0 cm: 1.8 mm", "50.0..60.0 cm: ?", "60.0..100.0 cm: 1.4 mm"),
                centres(read(guide).bore(guide.device().lumens().get(0))));
        SampleDevice whole = SampleDevice.guide("g", "1.8 mm");
        assertEquals(List.of("0.0..100.0 cm: 1.8 mm"), centres(read(whole).bore(whole.device().lumens().get(0))));
    }

    @Test
    void anExtensionIsCalledByItsNameOrElseByItsId() {
        Device named = balloon("x", "0.8 mm", "0.6 mm").device();
        Device unnamed = new Device("x", "", named.kind(), "", named.effectiveLength(), named.takesWire(),
                named.sections(), named.lumens(), false, List.of(), named.parts());
        Device other = new Device("x", "Long tube", named.kind(), "", named.effectiveLength(), named.takesWire(),
                named.sections(), named.lumens(), false, List.of(), named.parts());
        assertEquals(List.of("x bore", "Long tube bore"), List.of(through(unnamed).nameOf("bore"),
                through(other).nameOf("bore")));
    }

    private static Through through(Device device) {
        return new Through(ReadDevice.of(device, RULES.rules()), device.lumens().get(0), Length.ZERO);
    }

    @Test
    void thePlacesOfAWayAreCutWhereSomethingBeginsOrEnds() {
        Stretch bore = read(SampleDevice.guide("g", "1.8 mm")).bore(SampleDevice.guide("g", "1.8 mm").device().lumens()
                .get(0)).get(0);
        Device device = rod("n", DeviceKind.OTHER, "50 cm", "0.4 mm").device();
        Stretch whole = ReadDevice.of(device, RULES.rules()).outline(Phase.IN).get(0);
        Neighbour neighbour = new Neighbour(device, Part.SHAFT, whole,
                length("80 cm"));
        List<Place> places = Place.cut(bore, List.of(List.of(neighbour)));
        assertEquals(List.of("0.0..30.0 cm: 1.8 mm", "30.0..80.0 cm: 1.8 mm", "80.0..100.0 cm: 1.8 mm"),
                centres(places.stream().map(Place::bore).toList()));
        assertEquals(List.of(0, 1, 0), places.stream().map(place -> place.beside().size()).toList());
        assertEquals(Optional.of(neighbour), places.get(1).beside().stream().findFirst());
    }

    @Test
    void aNeighbourLiesWhereItHasALengthOrWhereAPlaceHasNone() {
        Device device = rod("n", DeviceKind.OTHER, "50 cm", "0.4 mm").device();
        Stretch whole = ReadDevice.of(device, RULES.rules()).outline(Phase.IN).get(0);
        Neighbour neighbour = new Neighbour(device, Part.SHAFT, whole,
                length("80 cm"));
        assertEquals(List.of(false, true, false), List.of(neighbour.liesIn(length("0 cm"), length("30 cm")),
                neighbour.liesIn(length("30 cm"), length("40 cm")),
                neighbour.liesIn(length("80 cm"), length("100 cm"))));
        assertEquals(List.of(true, true, false), List.of(neighbour.liesIn(length("30 cm"), length("30 cm")),
                neighbour.liesIn(length("80 cm"), length("80 cm")),
                neighbour.liesIn(length("81 cm"), length("81 cm"))));
    }
}
