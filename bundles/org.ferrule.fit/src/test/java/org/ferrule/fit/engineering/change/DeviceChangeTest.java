/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.fit.sample.SampleClaim;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.Texts;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

class DeviceChangeTest {

    /** A device in which nothing is left out. */
    private static Device complete() {
        Device plain = SampleDevice.balloon("b", "0.8 mm", "0.6 mm").size("2.0 x 15 mm").deploys()
                .claim(SampleClaim.minimumLumen("0.056 in")).claim(SampleClaim.largestDevice("0.014 in"))
                .oval("push rod", "142 cm", "150 cm", "0.6 mm", "0.4 mm").device();
        Parts parts = new Parts(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(Texts.length("20 mm")), List.of(new Parts.MarkerPart(Length.ZERO, Optional.empty())),
                Optional.of(true));
        return new Device(plain.id(), plain.name(), plain.kind(), plain.size(), plain.effectiveLength(),
                plain.takesWire(), plain.sections(), plain.lumens(), plain.deploys(), plain.claims(), parts,
                new SourceRef("label", "1", "2"));
    }

    @Test
    void aChangeThatChangesNothingKeepsTheWholeDevice() {
        Device device = complete();
        for (int i = 0; i < device.sections().size(); i++) {
            assertEquals(device, DeviceChange.of(new Place.Shaft(device, i), contour -> contour));
            assertEquals(device, DeviceChange.of(new Place.Shaft(device, i),
                    contour -> DeviceChange.eachFigure(contour, printed -> printed)));
        }
        assertEquals(device, DeviceChange.of(new Place.Bore(device, device.lumens().get(0), 0), printed -> printed));
    }

    @Test
    void aChangeTouchesItsSectionAlone() {
        Device device = complete();
        Device changed = DeviceChange.of(new Place.Shaft(device, 1), contour -> DeviceChange.eachFigure(contour,
                printed -> Dimension.parse("1 mm")));
        assertNotEquals(device.sections().get(1), changed.sections().get(1));
        assertEquals(device.sections().get(0), changed.sections().get(0));
        assertEquals(device.lumens(), changed.lumens());
        assertEquals(changed.sections().get(1).distal(), changed.sections().get(1).distalAfter(), "it grows from it");
    }

    @Test
    void takesAwayOneStatement() {
        Device device = complete();
        Claim first = device.claims().get(0);
        Device without = DeviceChange.without(new Place.Statement(device, Optional.of(first)));
        assertEquals(device.claims().subList(1, 2), without.claims());
        assertEquals(device.takesWire(), without.takesWire());
        Device wireless = DeviceChange.without(new Place.Statement(device, Optional.empty()));
        assertEquals(Optional.empty(), wireless.takesWire());
        assertEquals(device.claims(), wireless.claims());
        assertEquals(DeviceKind.BALLOON_CATHETER, wireless.kind());
    }

    @Test
    void anOutlineAfterUseThatIsStatedByItselfStays() {
        Device stated = SampleDevice.device("b", DeviceKind.BALLOON_CATHETER)
                .folded("balloon", "0 mm", "2 cm", "0.8 mm",
                        "1 mm")
                .device();
        Device changed = DeviceChange.of(new Place.Shaft(stated, 0), contour -> DeviceChange.eachFigure(contour,
                printed -> Dimension.parse("0.9 mm")));
        assertEquals(stated.sections().get(0).distalAfter(), changed.sections().get(0).distalAfter());
        assertNotEquals(stated.sections().get(0).distal(), changed.sections().get(0).distal());
    }
}
