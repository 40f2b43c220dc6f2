/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * Diametral clearance between a lumen and what lies in it, in three lanes; negative where it overlaps.
 *
 * @param worst smallest lumen, largest device
 * @param nominal centres
 * @param best largest lumen, smallest device
 */
public record Clearance(Length worst, Length nominal, Length best) {

    /** The clearance that a device leaves in a lumen. */
    public static Clearance between(Figure lumen, Figure device) {
        return new Clearance(lumen.low().minus(device.high()), lumen.centre().minus(device.centre()),
                lumen.high().minus(device.low()));
    }

    /** The clearance in that lane. */
    public Length in(Lane lane) {
        return switch (lane) {
            case WORST -> worst;
            case NOMINAL -> nominal;
            case BEST -> best;
        };
    }

    /** The smaller of two, lane by lane. */
    public Clearance min(Clearance other) {
        return new Clearance(worst.min(other.worst), nominal.min(other.nominal), best.min(other.best));
    }
}
