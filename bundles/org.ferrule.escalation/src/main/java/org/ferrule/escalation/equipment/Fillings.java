/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Optional;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Parts;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;

/** Whether balloons fill lumens. */
final class Fillings {
    private Fillings() {
    }

    /**
     * Compares the nominal diameter of a balloon with a lumen where that is widest: it fills when it is not smaller
     * than the lumen can be, and surely does not when it is smaller than the lumen is meant to be.
     */
    static Filling of(Device balloon, Optional<Figure> widest) {
        Optional<Length> diameter = balloon.parts().balloon().flatMap(Parts.BalloonPart::nominalDiameter)
                .filter(Dimension::readable).map(Dimension::label);
        Verdict verdict = diameter.isPresent() && widest.isPresent() ? verdict(diameter.get(), widest.get())
                : Verdict.UNKNOWN;
        return new Filling(diameter, widest.map(Figure::high), verdict);
    }

    private static Verdict verdict(Length diameter, Figure widest) {
        if (diameter.compareTo(widest.high()) >= 0) {
            return Verdict.FITS;
        }
        return diameter.compareTo(widest.centre()) >= 0 ? Verdict.TIGHT : Verdict.BLOCKED;
    }
}
