/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.catalogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.ferrule.engine.translate.UndescribedLumen;
import org.ferrule.fit.device.Contour;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.ShaftSection;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * Devices of which nothing is known but that they are there. They stand for what a document states and what cannot be
 * asked as written: what passes beside them, or in them, is unknown, or blocked where it would not even pass alone. The
 * easier question, without them, is never asked instead.
 */
public final class UnknownDevices {
    /** Longer than any catheter, so that wherever it lies nothing is known of the whole lumen. */
    private static final Length LENGTH = Length.of("100", LengthUnit.METRE);
    /** No id of a document can begin so. */
    private static final String MARK = "#";

    private final Map<String, Device> devices = new HashMap<>();

    /** The same device for the same words, so that an unchanged document asks an unchanged question. */
    public Device called(String words) {
        return devices.computeIfAbsent(words, w -> device(w, w, DeviceKind.OTHER));
    }

    /** One that has the lumens that its kind cannot be without, and an id that no other device has. */
    public Device called(String words, DeviceKind kind) {
        String id = MARK + kind.word() + MARK + words;
        return devices.computeIfAbsent(id, i -> device(i, words, kind));
    }

    private static Device device(String id, String words, DeviceKind kind) {
        Contour unknown = new Contour.Round(Optional.empty());
        ShaftSection shaft = ShaftSection.plain("", Length.ZERO, LENGTH, unknown);
        return new Device(id, words, kind, "", Optional.empty(), Optional.empty(), List.of(shaft),
                UndescribedLumen.of(kind, false, LENGTH), false, List.of());
    }
}
