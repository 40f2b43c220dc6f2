/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.member;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.SampleClaim;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Dimension;
import org.junit.jupiter.api.Test;

/** Places in papers: what is printed there, what decides an answer, and what changes with them. */
class PlaceTest {
    private static final RuleSet RULES = TestRules.exact().rules();
    private static final SampleDevice MICRO = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
            .takesWire("0.36 mm");
    private static final SampleDevice EXTENSION = device("x", DeviceKind.GUIDE_EXTENSION).length("150 cm")
            .section("tube", "0 cm", "25 cm", "1.7 mm").section("rod", "25 cm", "150 cm", "0.4 mm")
            .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 cm", "25 cm").bore("0 cm", "25 cm", "1.5 mm");

    private static Place.Shaft shaft(SampleDevice device) {
        return new Place.Shaft(device.device(), 0);
    }

    private static List<String> printed(Place place) {
        return place.printed().stream().map(Dimension::text).toList();
    }

    @Test
    void everyFigureOfAnOutlineIsPrintedOnce() {
        SampleDevice part = device("d", DeviceKind.OTHER);
        assertEquals(List.of("0.5 mm", "0.9 mm"), printed(shaft(device("d", DeviceKind.OTHER).taper("s", "0 mm", "5 cm",
                "0.5 mm", "0.9 mm"))));
        assertEquals(List.of("1.1 mm", "0.5 mm"), printed(shaft(device("d", DeviceKind.OTHER).oval("s", "0 mm", "5 cm",
                "1.1 mm", "0.5 mm"))));
        assertEquals(List.of("0.5 mm", "0.4 mm"), printed(shaft(part.bundle("s", "0 mm", "5 cm",
                member("0 mm", "0 mm", "0.5 mm"), member("1 mm", "0 mm", "0.4 mm"),
                member("2 mm", "0 mm", "0.5 mm")))));
        assertEquals(List.of("0.36 mm"), printed(new Place.Wire(MICRO.device())));
        assertThrows(IndexOutOfBoundsException.class, () -> new Place.Shaft(part.device(), 1));
    }

    @Test
    void aPlaceIsIncompleteWhereAnyFigureIsMissingOrUnreadable() {
        assertFalse(shaft(MICRO).isIncomplete());
        assertTrue(shaft(device("d", DeviceKind.OTHER).taper("s", "0 mm", "5 cm", "0.5 mm", "?")).isIncomplete());
        assertTrue(shaft(rod("d", DeviceKind.OTHER, "5 cm", "thin")).isIncomplete());
        assertFalse(bore(device("g", DeviceKind.GUIDE_CATHETER), "1 mm", "2 mm").isIncomplete());
        assertTrue(bore(device("g", DeviceKind.GUIDE_CATHETER), "1 mm", "?").isIncomplete());
        assertTrue(bore(device("g", DeviceKind.GUIDE_CATHETER), "?", "1 mm").isIncomplete());
        assertTrue(bore(device("g", DeviceKind.GUIDE_CATHETER), "wide", "1 mm").isIncomplete());
    }

    private static Place.Bore bore(SampleDevice sample, String proximal, String distal) {
        Device device = sample.lumen("main", Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", "5 cm")
                .taperedBore("0 mm", "5 cm", proximal, distal).device();
        return new Place.Bore(device, device.lumens().get(0), 0);
    }

    @Test
    void theClassOfAFigureFollowsFromSectionAndKind() {
        assertEquals(FigureClass.OUTER_DIAMETER, shaft(MICRO).figureClass());
        assertEquals(FigureClass.WIRE_DIAMETER,
                shaft(rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.36 mm")).figureClass());
        assertEquals(FigureClass.CROSSING_PROFILE, shaft(device("b", DeviceKind.BALLOON_CATHETER).folded("balloon",
                "0 mm", "2 cm", "0.9 mm")).figureClass());
    }

    @Test
    void ofSectionsOfOneNameThatOverlapTheOneThatDecidesIsFound() {
        Device twice = device("d", DeviceKind.OTHER).section("s", "0 mm", "5 cm", "0.5 mm").section("s", "0 mm", "5 cm",
                "0.9 mm").section("s", "5 cm", "9 cm", "1.2 mm").device();
        assertEquals(1, LimitingPlaces.shaft(twice, "s", length("4 cm")).orElseThrow().index());
        assertEquals(2, LimitingPlaces.shaft(twice, "s", length("6 cm")).orElseThrow().index());
        assertEquals(Optional.empty(), LimitingPlaces.shaft(twice, "s", length("91 mm")));
        assertEquals(Optional.empty(), LimitingPlaces.shaft(twice, "t", length("4 cm")));
    }

    @Test
    void theDecidingSectionOfALumenIsThatOfTheExtensionWhereItLiesThere() {
        SampleQuestion through = passage(rod("m", DeviceKind.MICROCATHETER, "135 cm", "1.45 mm"), guide("g", "2.5 mm"))
                .through(EXTENSION, "5 cm");
        Place.Bore bore = LimitingPlaces.bore(through.question(), through.in().limiting().orElseThrow()).orElseThrow();
        assertEquals("x", bore.device().id());
        SampleQuestion narrow = passage(rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm"), guide("g", "1.2 mm"))
                .through(EXTENSION, "5 cm");
        assertEquals("g", LimitingPlaces.bore(narrow.question(), narrow.in().limiting().orElseThrow()).orElseThrow()
                .device().id());
    }

    @Test
    void aReplacementTouchesADeviceWhereverItStands() {
        Device thicker = rod("m", DeviceKind.MICROCATHETER, "135 cm", "1 mm").device();
        Replacement replacement = Replacement.of(MICRO.device(), thicker, RULES);
        FitQuestion moving = passage(MICRO, guide("g", "2 mm")).question();
        assertTrue(replacement.touches(moving));
        assertEquals(thicker, replacement.in(moving).inner().device());
        FitQuestion beside = passage(rod("o", DeviceKind.OTHER, "135 cm", "0.4 mm"), guide("g", "2 mm"))
                .beside(MICRO, "5 cm").question();
        assertTrue(replacement.touches(beside));
        assertEquals(thicker, replacement.in(beside).conditions().inside().get(0).device().device());
        FitQuestion without = passage(rod("o", DeviceKind.OTHER, "135 cm", "0.4 mm"), guide("g", "2 mm")).question();
        assertFalse(replacement.touches(without));
        FitQuestion passed = passage(rod("o", DeviceKind.OTHER, "135 cm", "0.4 mm"), guide("g", "2 mm"))
                .through(EXTENSION, "5 cm").question();
        Replacement tube = Replacement.of(EXTENSION.device(), DeviceChange.of(new Place.Shaft(EXTENSION.device(), 1),
                contour -> DeviceChange.eachFigure(contour, d -> Dimension.parse("0.5 mm"))), RULES);
        assertTrue(tube.touches(passed));
        assertFalse(replacement.touches(passed));
        assertTrue(Replacement.of(guide("g", "2 mm").device(), guide("g", "3 mm").device(), RULES).touches(passed));
    }

    @Test
    void aReplacementOfTheWireLeavesThePapers() {
        FitQuestion question = passage(MICRO, guide("g", "2 mm")).question();
        Replacement wire = Replacement.ofWire(MICRO.device(), OwnWire.NOT_STATED, RULES);
        assertTrue(wire.touches(question));
        assertEquals(OwnWire.NOT_STATED, wire.in(question).inner().wire());
        assertEquals(MICRO.device(), wire.in(question).inner().device());
        assertFalse(wire.touches(question.outer()));
        Replacement one = Replacement.ofWire(List.of(question.inner()), OwnWire.NOT_STATED, RULES);
        assertTrue(one.touches(question.inner()));
        assertFalse(one.touches(passage(MICRO, guide("g", "2 mm")).question().inner()),
                "another one of the same papers");
    }

    @Test
    void everyFigureOfAFormIsChangedAndAMissingOneStaysMissing() {
        List<SampleDevice> forms = List.of(rod("d", DeviceKind.OTHER, "5 cm", "1 mm"),
                device("d", DeviceKind.OTHER).oval("s", "0 mm", "5 cm", "1 mm", "0.5 mm"),
                device("d", DeviceKind.OTHER).bundle("s", "0 mm", "5 cm", member("0 mm", "0 mm", "1 mm"),
                        member("1 mm", "0 mm", "0.5 mm")));
        for (SampleDevice form : forms) {
            Device changed = DeviceChange.of(shaft(form), contour -> DeviceChange.eachFigure(contour,
                    d -> Dimension.parse("2 mm")));
            assertEquals(List.of("2 mm"), printed(new Place.Shaft(changed, 0)));
        }
        Device missing = DeviceChange.of(shaft(rod("d", DeviceKind.OTHER, "5 cm", "?")), contour -> DeviceChange
                .eachFigure(contour, d -> Dimension.parse("2 mm")));
        assertEquals(List.of(), printed(new Place.Shaft(missing, 0)));
    }

    @Test
    void theWireDecidesOnlyWhereItLiesBesideTheShaft() {
        SampleDevice exchange = SampleDevice.balloon("b", "0.5 mm", "0.8 mm").takesWire("0.36 mm");
        SampleQuestion beside = passage(exchange, guide("g", "2 mm"));
        assertEquals(Optional.of(new Place.Wire(exchange.device())),
                LimitingPlaces.wire(beside.question(), beside.in()));
        SampleQuestion inside = passage(MICRO, guide("g", "2 mm")).under(TestRules.usual());
        assertEquals(Optional.empty(), LimitingPlaces.wire(inside.question(), inside.in()));
    }

    @Test
    void aStatementPrintsItsFigureOrTheWireThatIsTaken() {
        Device claimed = rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").takesWire("0.36 mm")
                .claim(SampleClaim.minimumLumen("0.056 in")).claim(SampleClaim.compatible().devices("g")).device();
        assertEquals(List.of("0.056 in"), printed(new Place.Statement(claimed, Optional.of(claimed.claims().get(0)))));
        assertEquals(List.of(), printed(new Place.Statement(claimed, Optional.of(claimed.claims().get(1)))));
        assertEquals(List.of("0.36 mm"), printed(new Place.Statement(claimed, Optional.empty())));
    }
}
