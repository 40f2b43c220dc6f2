/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * The smallest circles round discs: both bounds must agree with the published radius; where that is only the best that
 * anybody has found, the arrangement found must. More discs than the solver takes are no check.
 */
final class CircleTable implements TableCheck {
    /** Bounds are rounded to 0.3 nm; the discs of a ring, which are placed to 0.3 nm, add a little to that. */
    private static final double FREE_ROUNDING = 2e-7;
    private static final double RING_ROUNDING = 1e-6;
    private static final String FREE = "free";
    private static final String BEST_KNOWN = "free, best known";

    @Override
    public Optional<CheckResult> check(CheckRow row) {
        List<Length> diameters = Stream.of(row.get("radii").split(" ")).map(CircleTable::twice).toList();
        String arrangement = row.get("arrangement");
        if (arrangement.equals(BEST_KNOWN) && diameters.size() > EnclosingCircle.MOST_DISCS) {
            return Optional.empty();
        }
        return Optional.of(CheckResult.of(row, arrangement + " " + row.get("radii"),
                compare(arrangement, row.get("enclosingRadius"), enclose(arrangement, diameters))));
    }

    private static Comparison compare(String arrangement, String expected, Enclosure enclosure) {
        double rounding = arrangement.startsWith(FREE) ? FREE_ROUNDING : RING_ROUNDING;
        Comparison found = Comparison.within(expected, enclosure.upperDiameter().mm() / 2, rounding);
        return arrangement.equals(BEST_KNOWN) ? found
                : Comparison.within(expected, enclosure.lowerDiameter().mm() / 2, rounding).and(found);
    }

    /** The diameter in millimetres of a radius such as 0.5 or 2/3. */
    private static Length twice(String radius) {
        String[] parts = radius.split("/");
        Length whole = Length.of(parts[0], LengthUnit.MILLIMETRE).times(2);
        return parts.length == 1 ? whole : whole.dividedBy(Long.parseLong(parts[1]));
    }

    private static Enclosure enclose(String arrangement, List<Length> diameters) {
        int last = diameters.size() - 1;
        return switch (arrangement) {
            case FREE, BEST_KNOWN -> EnclosingCircle.discs(diameters);
            case "ring" -> ring(diameters).enclosure();
            case "ring with wire" -> ring(diameters.subList(0, last)).with(diameters.get(last));
            default -> throw new IllegalArgumentException("no arrangement is called \"" + arrangement + "\"");
        };
    }

    /** Equal discs in a ring, each touching the next. */
    private static DiscSet ring(List<Length> diameters) {
        int n = diameters.size();
        double radiusMm = diameters.get(0).mm() / 2 / Math.sin(Math.PI / n);
        List<DiscSet.Disc> discs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            discs.add(new DiscSet.Disc(Length.ofMm(radiusMm * Math.cos(angle)),
                    Length.ofMm(radiusMm * Math.sin(angle)), diameters.get(0)));
        }
        return new DiscSet(discs);
    }
}
