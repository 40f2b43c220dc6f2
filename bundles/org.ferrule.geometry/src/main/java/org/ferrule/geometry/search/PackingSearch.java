/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * Looks for the smallest circle round bodies that are free to move and to turn: many descents from new arrangements and
 * from changes of good ones. The answer is good, not proved; it is the same for the same bodies every time.
 */
public final class PackingSearch {
    private static final double SOFT = 0.3;
    private static final double FIRM = 0.03;
    private static final double HARD = 1e-8;
    private static final int MOST_STEPS = 60;
    /** How far the radius that is expected after each round may be off; relative. In the end it must be better. */
    private static final double[] DOUBT = { 3e-3, 1e-4, 3e-6, 1e-7, -1e-10 };
    private static final int MOST_ROUNDS = 14;
    private static final int MOST_FILLING_STEPS = 300;
    private static final int FRESH = 8;
    private static final int PATIENCE = 15;
    /** Kept between bodies, so that rounding makes no overlap; relative to the largest body. */
    private static final double GAP = 1e-11;

    /** What rounding, at the worst, may leave; relative to the largest body. */
    private static final double LARGEST_OVERLAP = 1e-9;

    private final Parts parts;
    private final Energy energy;
    private final Descent descent;
    private final Starts starts;
    private final DoublePredicate enough;
    private final double unit;
    private final double[] now;
    private final double[] base;
    private double baseRadius;
    private Optional<double[]> best = Optional.empty();
    private double bestRadius = Double.POSITIVE_INFINITY;
    private int descents;
    private boolean done;

    private PackingSearch(List<Shape> shapes, DoublePredicate enough) {
        this.enough = enough;
        unit = shapes.stream().mapToDouble(Shape::reach).max().orElseThrow();
        parts = new Parts(shapes.stream().map(shape -> shape.times(1 / unit)).toList());
        energy = new Energy(parts);
        descent = new Descent(energy, parts.variables);
        starts = new Starts(parts);
        now = new double[parts.variables];
        base = new double[parts.variables];
    }

    /**
     * Searches.
     *
     * @param shapes two or more bodies, none of them a mere point
     * @param mostDescents when to end
     * @param enough tells of a radius whether it is known to be the least one, so that the search can end
     * @return empty if all that was found is bodies that overlap
     */
    public static Optional<Arrangement> search(List<Shape> shapes, int mostDescents, DoublePredicate enough) {
        PackingSearch search = new PackingSearch(shapes, enough);
        search.run(mostDescents);
        return search.result();
    }

    /** Improves an arrangement of the bodies without looking for others; empty if they overlap in the end. */
    public static Optional<Arrangement> settle(List<Shape> shapes, Arrangement start) {
        PackingSearch search = new PackingSearch(shapes, radius -> true);
        start.write(search.parts, search.unit, search.now);
        search.relax(FIRM);
        search.energy.shift(search.now);
        search.firm();
        return search.result();
    }

    /**
     * Moves all but the first bodies until none overlaps, within the circle of the start; empty if they overlap still.
     */
    public static Optional<Arrangement> fill(List<Shape> shapes, Arrangement start, int fixed) {
        PackingSearch search = new PackingSearch(shapes, radius -> true);
        start.write(search.parts, search.unit, search.now);
        search.energy.fix(search.parts.first[fixed]);
        search.descent.forget();
        search.descent.descend(search.now, MOST_FILLING_STEPS, LARGEST_OVERLAP / 10);
        search.keep();
        return search.result();
    }

    private Optional<Arrangement> result() {
        return best.map(variables -> Arrangement.read(parts, unit, variables));
    }

    private void run(int mostDescents) {
        while (!done && descents < mostDescents) {
            baseRadius = Double.POSITIVE_INFINITY;
            for (int i = 0; i < FRESH && !done; i++) {
                starts.fresh(now);
                descend();
            }
            int failures = 0;
            while (!done && failures < PATIENCE && descents < mostDescents) {
                System.arraycopy(base, 0, now, 0, base.length);
                starts.change(now);
                failures = descend() ? 0 : failures + 1;
            }
        }
    }

    /** Goes down from the arrangement. Tells whether that led lower than the base of this round of changes. */
    private boolean descend() {
        descents++;
        energy.keepApart(0);
        relax(SOFT);
        relax(FIRM);
        double expected = energy.shift(now);
        boolean lower = expected < baseRadius * (1 - 1e-6);
        if (lower) {
            baseRadius = expected;
            System.arraycopy(now, 0, base, 0, now.length);
        }
        if (expected < bestRadius * (1 + DOUBT[0])) {
            firm();
        }
        return lower;
    }

    private void relax(double weight) {
        energy.soften(weight);
        descent.forget();
        descent.descend(now, MOST_STEPS, weight * 1e-2);
    }

    /** Takes the overlaps away, as long as a better answer than the best so far is to be expected. */
    private void firm() {
        energy.keepApart(GAP);
        double weight = FIRM;
        for (int round = 1; round < MOST_ROUNDS; round++) {
            double level = Math.max(1e-16, weight * 1e-4);
            descent.descend(now, MOST_STEPS, level);
            double expected = energy.shift(now);
            if (expected > bestRadius * (1 + DOUBT[Math.min(round, DOUBT.length - 1)])) {
                return;
            }
            if (weight > HARD) {
                weight *= 0.1;
                energy.harden(0.1);
            }
        }
        keep();
    }

    private void keep() {
        double radius = energy.radius(now);
        if (radius < bestRadius && energy.overlap(now) < LARGEST_OVERLAP) {
            bestRadius = radius;
            double[] kept = now.clone();
            kept[parts.variables - 1] = radius;
            best = Optional.of(kept);
            done = enough.test(radius * unit);
        }
    }
}
