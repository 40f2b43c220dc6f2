/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile;

import org.ferrule.profile.curve.Crossing;

/**
 * A crossing of the outer diameters of two devices.
 *
 * @param first the number of a device, from 0
 * @param second the number of another one, larger than {@code first}
 * @param crossing where they cross
 */
public record CurveCrossing(int first, int second, Crossing crossing) {

    /** The number of the device that is the larger one proximal to the crossing. */
    public int largerBeyond() {
        return crossing.larger() == 0 ? first : second;
    }
}
