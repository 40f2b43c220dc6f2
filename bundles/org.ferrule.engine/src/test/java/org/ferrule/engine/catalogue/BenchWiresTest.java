/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A wire for burrs has a shaft of 0.009 in and a spring tip of 0.014 in (common practice). */
class BenchWiresTest {
    private final BenchWires wires = new BenchWires(List.of(new CataloguedDevice("wires.devices.json",
            burrWire(), "", "", "")));

    @ParameterizedTest
    @ValueSource(booleans = { true, false })
    void countsATaperedWireWithItsThinnestPart(boolean passed) {
        assertEquals(Optional.of(Dimension.parse("0.009 in")), resolved("burr-wire", passed).wire());
    }

    @ParameterizedTest
    @ValueSource(booleans = { true, false })
    void keepsAnUnknownWireUnreadable(boolean passed) {
        assertFalse(resolved("other-wire", passed).wire().orElseThrow().readable());
    }

    private BenchResult resolved(String wire, boolean passed) {
        return wires.resolve(List.of(new BenchResult("guide", "", "burr", Optional.of(Dimension.lenient(wire)), passed,
                Set.of(Phase.IN), 1, SourceRef.NONE))).get(0);
    }

    private static Device burrWire() {
        return new Device("burr-wire", "burr wire", DeviceKind.GUIDEWIRE, "", Optional.empty(), Optional.empty(),
                List.of(section("spring tip", 0, 22, "0.014 in"), section("shaft", 22, 3300, "0.009 in")), List.of(),
                false, List.of());
    }

    private static ShaftSection section(String name, double fromMm, double toMm, String diameter) {
        return ShaftSection.plain(name, Length.ofMm(fromMm), Length.ofMm(toMm),
                new Contour.Round(Optional.of(Dimension.parse(diameter))));
    }
}
