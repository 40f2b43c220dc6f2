/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import org.ferrule.quantity.Length;

/**
 * The figures that a section prints, at both of its ends: a centre, a minimum, a maximum, the low end of a range or the
 * mean of a sample, as its label says.
 *
 * @param distal at its distal end
 * @param proximal at its proximal end; the same where there is no taper
 */
public record Size(Length distal, Length proximal) {

    /** Whether both ends are the same. */
    public boolean isUniform() {
        return distal.equals(proximal);
    }

    /** The larger of both. */
    public Length largest() {
        return distal.max(proximal);
    }
}
