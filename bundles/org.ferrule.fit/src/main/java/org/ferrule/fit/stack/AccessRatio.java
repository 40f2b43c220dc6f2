/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * How thick the outermost device is beside the vessel of the access. It says nothing of the vessel's wall.
 *
 * @param vessel name of the vessel
 * @param smallestVessel the smallest diameter of the vessel that its measurement leaves open
 * @param largestDevice the largest outer diameter of the outermost device
 * @param low the least ratio of device to vessel
 * @param high the greatest ratio of device to vessel
 */
public record AccessRatio(String vessel, Length smallestVessel, Length largestDevice, double low, double high) {

    public AccessRatio {
        Objects.requireNonNull(vessel, "vessel");
        Objects.requireNonNull(smallestVessel, "smallestVessel");
        Objects.requireNonNull(largestDevice, "largestDevice");
    }

    /** Whether the device may be larger than the vessel. */
    public boolean mayBeLarger() {
        return largestDevice.compareTo(smallestVessel) > 0;
    }
}
