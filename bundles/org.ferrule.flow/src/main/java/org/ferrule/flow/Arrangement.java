/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.List;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;

/** Placed discs in radii of their lumen. */
final class Arrangement {
    /** Overlaps up to this, in radii of the lumen, are rounding: about a nanometre. */
    private static final double TOLERANCE = 1e-6;

    private Arrangement() {
    }

    /** Returns the discs that have a thickness. */
    static List<Circle> scaled(Length lumen, List<PlacedDisc> discs) {
        double radius = lumen.mm() / 2;
        return discs.stream().filter(disc -> !disc.diameter().equals(Length.ZERO))
                .map(disc -> new Circle(new Complex(disc.xMm(), disc.yMm()).times(1 / radius),
                        disc.diameter().mm() / 2 / radius))
                .toList();
    }

    /**
     * Does the same.
     *
     * @throws IllegalArgumentException if discs overlap or reach out of the lumen
     */
    static List<Circle> checked(Length lumen, List<PlacedDisc> discs) {
        List<Circle> circles = scaled(lumen, discs);
        for (int i = 0; i < circles.size(); i++) {
            Circle circle = circles.get(i);
            // Written so that a place which is no number is refused as well.
            if (!(circle.excess() <= TOLERANCE)) {
                throw new IllegalArgumentException(discs + ": a disc reaches out of the lumen of " + lumen);
            }
            if (circles.subList(0, i).stream().anyMatch(other -> circle.overlap(other) > TOLERANCE)) {
                throw new IllegalArgumentException(discs + ": discs overlap");
            }
        }
        return circles;
    }
}
