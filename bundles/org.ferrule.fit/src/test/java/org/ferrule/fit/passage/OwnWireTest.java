/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.TestRules;
import org.junit.jupiter.api.Test;

/** The wire over which a device runs: of the library, or as the device states it. */
class OwnWireTest {
    private static final FigureReader READER = new FigureReader(TestRules.exact().rules());

    private static SampleDevice tapered(String shaft) {
        return device("w", DeviceKind.GUIDEWIRE).taper("tip", "0 cm", "5 cm", "0.25 mm", "0.36 mm").section("shaft",
                "5 cm", "190 cm", shaft);
    }

    @Test
    void theThickestSectionOfAWireCounts() {
        OwnWire wire = OwnWire.ofDevice(tapered("0.33 mm").device(), READER);
        assertEquals(Optional.of(Figure.exactly(length("0.36 mm"))), wire.diameter());
        assertEquals(Optional.of(length("0.36 mm")), wire.label());
        assertEquals("w", wire.device().orElseThrow().id());
    }

    @Test
    void aWireOfWhichASectionIsUnknownHasNoDiameter() {
        OwnWire wire = OwnWire.ofDevice(tapered("?").device(), READER);
        assertEquals(Optional.empty(), wire.diameter());
        assertEquals(Optional.empty(), wire.label());
        assertEquals("w", wire.device().orElseThrow().id());
        assertEquals(Optional.empty(), OwnWire.ofDevice(tapered("thin").device(), READER).diameter());
        assertEquals(Optional.empty(), OwnWire.ofDevice(device("w", DeviceKind.GUIDEWIRE).oval("flat", "0 cm", "190 cm",
                "0.3 mm", "0.2 mm").device(), READER).diameter());
    }

    @Test
    void aDeviceStatesTheLargestWireThatItTakes() {
        OwnWire stated = OwnWire.statedFor(rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm").takesWire("0.4 mm")
                .device(), READER);
        assertEquals(Optional.of(length("0.4 mm")), stated.label());
        assertEquals(Optional.of(Figure.exactly(length("0.4 mm"))), stated.diameter());
        assertEquals(OwnWire.NOT_STATED, OwnWire.statedFor(rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
                .device(), READER));
        assertEquals(OwnWire.NOT_STATED, OwnWire.statedFor(rod("m", DeviceKind.MICROCATHETER, "135 cm", "0.9 mm")
                .takesWire("any").device(), READER));
    }
}
