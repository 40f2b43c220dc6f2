/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

import java.util.Objects;

/**
 * The chance that a pair taken at random overlaps, where standard deviations are stated or samples were measured.
 *
 * @param deviceSection name of the device's section
 * @param lumenSection name of the lumen's section
 * @param meanMm mean diametral clearance
 * @param standardDeviationMm of the clearance
 * @param low lower bound of the chance
 * @param high upper bound of the chance; more than {@code low} where several places share a dimension
 */
public record Chance(String deviceSection, String lumenSection, double meanMm, double standardDeviationMm, double low,
        double high) implements Evidence {

    public Chance {
        Objects.requireNonNull(deviceSection, "deviceSection");
        Objects.requireNonNull(lumenSection, "lumenSection");
        if (!(low >= 0 && low <= high && high <= 1)) {
            throw new IllegalArgumentException("no chance: " + low + " to " + high);
        }
    }
}
