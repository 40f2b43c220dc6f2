/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * A rigid part in a bend.
 *
 * @param deviceSection name of the rigid section
 * @param rigidLength its length
 * @param deviceDiameter its diameter, in the lane that decides
 * @param freeLumen the lumen's diameter less what lies in it already, in the lane that decides; absent in a vessel
 * @param bendRadius of the bend's centre line
 * @param vessel whether a vessel is bent, which straightens, and not a lumen, which does not yield
 * @param longest the longest rigid length that passes; absent in a vessel
 * @param leastRadius the least radius of the centre line that lets it pass
 */
public record BendRoom(String deviceSection, Length rigidLength, Length deviceDiameter, Optional<Length> freeLumen,
        Length bendRadius, boolean vessel, Optional<Length> longest, Optional<Length> leastRadius) implements Evidence {

    public BendRoom {
        Objects.requireNonNull(deviceSection, "deviceSection");
        Objects.requireNonNull(rigidLength, "rigidLength");
        Objects.requireNonNull(deviceDiameter, "deviceDiameter");
        Objects.requireNonNull(freeLumen, "freeLumen");
        Objects.requireNonNull(bendRadius, "bendRadius");
        Objects.requireNonNull(longest, "longest");
        Objects.requireNonNull(leastRadius, "leastRadius");
    }
}
