/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import java.util.stream.IntStream;
import org.ferrule.geometry.search.Arrangement.Centre;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * A body where it lies. All comparisons are rounded so that touching counts as overlapping rather than the other way.
 *
 * @param discs its discs; of a bar the two ends
 * @param bar whether all that lies between the two discs belongs to the body
 */
record Outline(List<PlacedDisc> discs, boolean bar) {
    /** More than what a handful of operations on doubles may be off; relative. */
    private static final double ROUNDING = 2e-15;
    /** Halves of a third of a nanometre in a millimetre. */
    private static final double UNITS = 2.0 * LengthUnit.MILLIMETRE.thirdNanometres();

    static Outline of(List<Length> diameters, List<Centre> centres, boolean bar) {
        return new Outline(IntStream.range(0, diameters.size())
                .mapToObj(i -> new PlacedDisc(centres.get(i).x(), centres.get(i).y(), diameters.get(i))).toList(), bar);
    }

    /** Returns the same body further from the origin by a part of its distance. */
    Outline moved(double part) {
        double dx = part * discs.stream().mapToDouble(PlacedDisc::xMm).average().orElseThrow();
        double dy = part * discs.stream().mapToDouble(PlacedDisc::yMm).average().orElseThrow();
        return new Outline(discs.stream().map(d -> new PlacedDisc(d.xMm() + dx, d.yMm() + dy, d.diameter())).toList(),
                bar);
    }

    /** Returns the diameter of a circle about the origin that is large enough. */
    Length around() {
        return discs.stream().map(disc -> disc.diameter().plus(new Length((long) Math.ceil(
                Math.hypot(disc.xMm(), disc.yMm()) * UNITS * (1 + ROUNDING))))).reduce(Length.ZERO, Length::max);
    }

    /** Tells whether it certainly does not overlap another body. */
    boolean isClearOf(Outline other) {
        if (!bar && !other.bar) {
            return discs.stream().allMatch(one -> other.discs.stream().allMatch(two -> areClear(one, two,
                    Math.hypot(one.xMm() - two.xMm(), one.yMm() - two.yMm()) * (1 - ROUNDING))));
        }
        return (!bar || other.isClearOfBar(this)) && (!other.bar || isClearOfBar(other))
                && !(bar && other.bar && crosses(other));
    }

    private boolean isClearOfBar(Outline other) {
        return discs.stream().allMatch(disc -> areClear(disc, other.discs.get(0), other.distance(disc)));
    }

    private static boolean areClear(PlacedDisc one, PlacedDisc two, double distanceMm) {
        return distanceMm * UNITS >= one.diameter().plus(two.diameter()).thirdNanometres();
    }

    /** Returns a distance from the middle line that is not too large. */
    private double distance(PlacedDisc disc) {
        PlacedDisc from = discs.get(0);
        double alongX = discs.get(1).xMm() - from.xMm();
        double alongY = discs.get(1).yMm() - from.yMm();
        double toX = disc.xMm() - from.xMm();
        double toY = disc.yMm() - from.yMm();
        double squared = alongX * alongX + alongY * alongY;
        double part = squared > 0 ? Math.max(0, Math.min(1, (toX * alongX + toY * alongY) / squared)) : 0;
        double distance = Math.hypot(toX - part * alongX, toY - part * alongY);
        return distance - 4 * ROUNDING * (Math.hypot(toX, toY) + Math.sqrt(squared));
    }

    private boolean crosses(Outline other) {
        return side(other.discs.get(0)) * side(other.discs.get(1)) < 0
                && other.side(discs.get(0)) * other.side(discs.get(1)) < 0;
    }

    private double side(PlacedDisc disc) {
        PlacedDisc from = discs.get(0);
        PlacedDisc to = discs.get(1);
        return Math.signum((to.xMm() - from.xMm()) * (disc.yMm() - from.yMm())
                - (to.yMm() - from.yMm()) * (disc.xMm() - from.xMm()));
    }
}
