/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Devices of which nothing is known but that they are there. They stand for conditions that a chart states and that
 * cannot be asked as written: what passes beside them is unknown, or blocked where it would not even pass alone. The
 * easier question, without the condition, is never asked instead.
 */
final class UnknownDevices {
    /** Longer than any catheter, so that wherever it lies nothing is known of the whole lumen. */
    private static final Length LENGTH = Length.of("100", LengthUnit.METRE);
    private final Map<String, Device> devices = new HashMap<>();

    /** The same device for the same words, so that an unchanged chart asks an unchanged question. */
    Device called(String words) {
        return devices.computeIfAbsent(words, UnknownDevices::device);
    }

    private static Device device(String words) {
        Contour unknown = new Contour.Round(Optional.empty());
        ShaftSection shaft = ShaftSection.plain("", Length.ZERO, LENGTH, unknown);
        return new Device(words, words, DeviceKind.OTHER, "", Optional.empty(), Optional.empty(), List.of(shaft),
                List.of(), false, List.of());
    }
}
