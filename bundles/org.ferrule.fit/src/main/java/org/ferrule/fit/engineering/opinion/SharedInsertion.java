/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A device pushed through a lumen in which others lie. Wherever a piece of it comes to lie beside them the discs of all
 * are gathered, and a {@link Ring} is laid round them. Where two discs meet, or none of them tapers, that is done at the
 * corners of what the pieces share; else along strips, in each of which all count as thick as they are anywhere in it
 * for the room that is surely left, and at stations for the room that is surely not.
 */
final class SharedInsertion implements Push {
    private final List<Gathering> gatherings = new ArrayList<>();

    SharedInsertion(List<Company.Stretch> way, List<Solid> device, long travel) {
        for (Company.Stretch stretch : way) {
            for (Solid moving : device) {
                if (stretch.lumen().from() + moving.from() < travel) {
                    gatherings.add(new Gathering(stretch, moving, travel));
                }
            }
        }
    }

    @Override
    public boolean meets() {
        return !gatherings.isEmpty();
    }

    private record Bounded(Gathering gathering, double least) {
    }

    /** The tightest first: those that cannot be tighter need no ring. */
    @Override
    public Gap leastGap(double[] drawn) {
        List<Bounded> order = new ArrayList<>(gatherings.size());
        gatherings.forEach(g -> order.add(new Bounded(g, g.inLine(drawn))));
        order.sort(Comparator.comparingDouble(Bounded::least));
        Gap gap = Gap.NOTHING_MEETS;
        for (Bounded each : order) {
            if (each.least() >= gap.low()) {
                return gap;
            }
            gap = gap.min(each.gathering().gap(drawn, gap));
        }
        return gap;
    }
}
