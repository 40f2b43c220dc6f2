/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

import java.util.List;
import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * The flow that a lumen still lets through with devices in it, as a share of the empty lumen's.
 *
 * @param lumenSection name of the lumen's section where it is least
 * @param lumen its diameter there
 * @param devices the diameters of what lies there
 * @param low the least share, over all positions of the devices
 * @param high the greatest share
 * @param exact whether both ends are exact, and not only the extremes that a search found
 */
public record FlowLeft(String lumenSection, Length lumen, List<Length> devices, double low, double high,
        boolean exact) implements Evidence {

    public FlowLeft {
        Objects.requireNonNull(lumenSection, "lumenSection");
        Objects.requireNonNull(lumen, "lumen");
        devices = List.copyOf(devices);
        if (!(low >= 0 && low <= high && high <= 1)) {
            throw new IllegalArgumentException("no share of flow: " + low + " to " + high);
        }
    }
}
