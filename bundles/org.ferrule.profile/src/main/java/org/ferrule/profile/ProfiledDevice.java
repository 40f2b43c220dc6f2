/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.profile.curve.DeviceCurves;
import org.ferrule.quantity.Length;

/**
 * A device in a comparison.
 *
 * @param read the device, by the rule set of the comparison
 * @param landmark the station of the landmark from its distal tip; absent when it has none or nobody states where
 * @param curves from the landmark; absent with it, since nobody can tell where they lie
 */
public record ProfiledDevice(ReadDevice read, Optional<Length> landmark, Optional<DeviceCurves> curves) {

    public ProfiledDevice {
        Objects.requireNonNull(read, "read");
        Objects.requireNonNull(landmark, "landmark");
        Objects.requireNonNull(curves, "curves");
    }

    static ProfiledDevice of(ReadDevice read, Landmark landmark) {
        Optional<Length> station = landmark.on(read);
        return new ProfiledDevice(read, station, station.map(from -> DeviceCurves.of(read, from)));
    }

    /** Its id. */
    public String id() {
        return read.device().id();
    }

    /** Its name, or its id where it has none. */
    public String name() {
        return read.device().name().isEmpty() ? id() : read.device().name();
    }

    /** Its curves from its own distal tip, whatever the landmark. */
    public DeviceCurves fromTip() {
        return DeviceCurves.of(read, Length.ZERO);
    }
}
