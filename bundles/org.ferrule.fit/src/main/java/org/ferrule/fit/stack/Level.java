/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.List;
import java.util.Objects;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;

/**
 * What lies in one lumen side by side.
 *
 * @param beside devices that went in first, in that order; they hold nothing
 * @param device the device that goes in last, and holds the next level. A haemostasis valve or connector lies in
 *               nothing: it sits at the hub of the level before it, and all that goes in there passes it
 */
public record Level(List<Placed> beside, Placed device) {

    public Level {
        beside = List.copyOf(beside);
        Objects.requireNonNull(device, "device");
        if (!beside.isEmpty() && device.device().device().kind() == DeviceKind.HAEMOSTASIS_VALVE) {
            throw new IllegalArgumentException(
                    "beside valve \"" + device.device().device().id() + "\" lies nothing, but " + beside.size()
                            + " devices were named");
        }
    }

    /** A level of one device. */
    public static Level of(Placed device) {
        return new Level(List.of(), device);
    }

    boolean isValve() {
        return device.device().device().kind() == DeviceKind.HAEMOSTASIS_VALVE;
    }

    /** Whether its lumen begins at a collar, so that proximal to it the lumen around stays. */
    boolean isExtension() {
        return device.holding().filter(l -> l.opening() == Lumen.Opening.COLLAR).isPresent();
    }
}
