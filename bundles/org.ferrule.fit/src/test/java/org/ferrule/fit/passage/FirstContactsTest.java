/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FirstContacts.Meeting;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.verdict.Lane;
import org.junit.jupiter.api.Test;

/** Where a stepped device first meets the wall: at its largest, as it is nominally, and where a figure is missing. */
class FirstContactsTest {

    private static SampleDevice stepped(String shaft) {
        return device("d", DeviceKind.MICROCATHETER).length("135 cm").section("tip", "0 cm", "5 cm", "0.8 mm ±0.05")
                .section("middle", "5 cm", "10 cm", "0.98 mm ±0.05").section("shaft", "10 cm", "135 cm", shaft);
    }

    private static FirstContacts contacts(SampleDevice device) {
        return FirstContacts.of(passage(device, guide("g", "1 mm")).question());
    }

    @Test
    void theWorstCaseMeetsTheWallBeforeTheUsualPartStops() {
        FirstContacts contacts = contacts(stepped("1.1 mm ±0.05"));
        Meeting worst = contacts.worst().orElseThrow();
        assertEquals("middle", worst.at().deviceSection());
        assertEquals(length("5 cm"), worst.travel());
        assertEquals(length("-0.03 mm"), worst.clearance().worst());
        Meeting stop = contacts.stop().orElseThrow();
        assertEquals("shaft", stop.at().deviceSection());
        assertEquals(length("10 cm"), stop.travel());
        assertEquals(length("-0.1 mm"), stop.clearance().nominal());
        assertEquals(Optional.empty(), contacts.unknown());
    }

    @Test
    void aMissingFigureIsToldWhereItMeetsTheLumen() {
        FirstContacts contacts = contacts(stepped("?"));
        assertEquals(length("10 cm"), contacts.unknown().orElseThrow().travel());
        assertEquals(length("5 cm"), contacts.worst().orElseThrow().travel());
        assertEquals(Optional.empty(), contacts.stop());
    }

    @Test
    void whatPassesMeetsNothing() {
        FirstContacts contacts = contacts(rod("d", DeviceKind.MICROCATHETER, "135 cm", "0.95 mm ±0.05"));
        assertEquals(new FirstContacts(Optional.empty(), Optional.empty(), Optional.empty()), contacts);
    }

    @Test
    void besideOthersNobodyIsAsked() {
        SampleQuestion beside = passage(stepped("1 mm"), guide("g", "2 mm"))
                .beside(rod("w", DeviceKind.GUIDEWIRE, "190 cm", "0.36 mm"), "5 cm");
        Exception refused = assertThrows(IllegalArgumentException.class, () -> FirstContacts.of(beside.question()));
        assertTrue(refused.getMessage().contains("\"d\""), refused.getMessage());
        assertThrows(IllegalStateException.class,
                () -> Route.of(beside.question(), Phase.IN).firstOverlap(Lane.WORST));
    }
}
