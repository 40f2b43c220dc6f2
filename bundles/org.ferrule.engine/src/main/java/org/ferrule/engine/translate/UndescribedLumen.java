/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.quantity.Length;

/**
 * The lumen of a device whose papers do not describe one although it must have one: a guide catheter, or anything that
 * takes a wire. Its diameter is unknown, so only a claim or a bench result can answer for it.
 */
public final class UndescribedLumen {
    private static final Set<DeviceKind> HAVE_A_WORKING_LUMEN = Set.of(DeviceKind.INTRODUCER_SHEATH,
            DeviceKind.GUIDE_CATHETER, DeviceKind.GUIDE_EXTENSION, DeviceKind.INNER_CATHETER,
            DeviceKind.MICROCATHETER, DeviceKind.DUAL_LUMEN_MICROCATHETER, DeviceKind.ASPIRATION_CATHETER,
            DeviceKind.HAEMOSTASIS_VALVE);

    private UndescribedLumen() {
    }

    /** The lumens of a device whose document names none. */
    public static List<Lumen> of(DeviceKind kind, boolean takesWire, Length wholeLength) {
        if (HAVE_A_WORKING_LUMEN.contains(kind)) {
            return List.of(undescribed(Lumen.Use.WORKING, wholeLength));
        }
        return takesWire ? List.of(undescribed(Lumen.Use.WIRE, wholeLength)) : List.of();
    }

    private static Lumen undescribed(Lumen.Use use, Length wholeLength) {
        return new Lumen("", use, Lumen.Opening.HUB, Length.ZERO, wholeLength, List.of());
    }
}
