/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.List;
import java.util.Optional;

import org.ferrule.profile.curve.Mark;
import org.ferrule.profile.curve.Reading;
import org.ferrule.quantity.Length;

/**
 * All that a comparison tells of one device at one station.
 *
 * @param device its number in the comparison, from 0
 * @param fromTip the station on the device, from its distal tip; absent when it is not placed
 * @param outer the shaft alone
 * @param withWire shaft and own wire; absent where the wire does not lie beside the shaft
 * @param inner its lumens there
 * @param marks exit ports, markers and rigid parts there
 */
public record DeviceReading(int device, Optional<Length> fromTip, Reading outer, Optional<Reading> withWire,
        List<LumenReading> inner, List<Mark> marks) {

    /**
     * A lumen at a station.
     *
     * @param lumen its name
     * @param reading its inner diameter
     */
    public record LumenReading(String lumen, Reading reading) {
    }

    public DeviceReading {
        inner = List.copyOf(inner);
        marks = List.copyOf(marks);
    }
}
