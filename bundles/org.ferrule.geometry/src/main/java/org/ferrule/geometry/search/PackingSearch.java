/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoublePredicate;

/**
 * Looks for the smallest circle round bodies that are free to move and to turn: many descents from new arrangements, from
 * all orders round the rim where they are few, and from changes of good ones. The answer is good, not proved; it is the same for the same bodies every time.
 */
public final class PackingSearch {
    /** So many bodies or fewer have so few arrangements that new ones find the best sooner than changes do. */
    private static final int FEW = 7;
    /** Bars of a radius below this, relative to the largest body, are thin. */
    private static final double THIN = 0.1;

    private final Parts parts;
    private final Relaxation relaxation;
    private final Starts starts;
    private final DoublePredicate enough;
    private final double unit;
    private final int freshOnes;
    private final int patience;
    private final double[] now;
    /** What changes start from, and the radius to be expected of it. */
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
        relaxation = new Relaxation(parts);
        starts = new Starts(parts);
        freshOnes = shapes.size() <= FEW ? 30 : 8;
        patience = shapes.size() <= FEW ? 10 : 15;
        now = new double[parts.variables];
        base = new double[parts.variables];
    }

    /**
     * Searches.
     *
     * @param shapes two or more bodies, none of them a mere point
     * @param mostDescents when to end
     * @param enough tells of a radius whether it is known to be the least one, so that the search can end
     * @return the best arrangement found; a pile if in all that was found bodies overlap
     */
    public static Arrangement search(List<Shape> shapes, int mostDescents, DoublePredicate enough) {
        PackingSearch search = new PackingSearch(shapes, enough);
        search.startFromPile();
        search.run(mostDescents);
        return search.result().orElseGet(() -> Arrangement.pile(shapes));
    }

    /** Improves an arrangement of the bodies without looking for others; empty if they overlap in the end. */
    public static Optional<Arrangement> settle(List<Shape> shapes, Arrangement start) {
        PackingSearch search = new PackingSearch(shapes, radius -> true);
        start.write(search.parts, search.unit, search.now);
        search.settle(Relaxation.FIRM);
        return search.result();
    }

    /**
     * Moves all but the first bodies until none overlaps, within the circle of the start; empty if they overlap still.
     */
    public static Optional<Arrangement> fill(List<Shape> shapes, Arrangement start, int fixed) {
        PackingSearch search = new PackingSearch(shapes, radius -> true);
        start.write(search.parts, search.unit, search.now);
        if (search.relaxation.fill(search.now, fixed)) {
            search.keep();
        }
        return search.result();
    }

    private Optional<Arrangement> result() {
        return best.map(variables -> Arrangement.read(parts, unit, variables));
    }

    /** Thin bars go through each other in other descents, so they get one so firm that they cannot. */
    private void startFromPile() {
        double thinnest = Double.POSITIVE_INFINITY;
        for (Shape shape : parts.shapes) {
            thinnest = shape.bar() ? Math.min(thinnest, shape.radius()[0]) : thinnest;
        }
        if (thinnest < THIN) {
            Arrangement.pile(parts.shapes).write(parts, 1, now);
            settle(thinnest * Relaxation.FIRM);
        }
    }

    private void settle(double weight) {
        relaxation.relax(now, weight);
        if (relaxation.firm(now, weight, bestRadius)) {
            keep();
        }
    }

    private void run(int mostDescents) {
        round(freshOnes, starts::fresh, mostDescents);
        if (starts.rings() > 0) {
            round(starts.rings(), starts::ring, mostDescents);
        }
        while (!done && descents < mostDescents) {
            round(freshOnes, starts::fresh, mostDescents);
        }
    }

    /** Goes down from so many new arrangements, and then from changes of the best of them. */
    private void round(int count, Consumer<double[]> start, int mostDescents) {
        baseRadius = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count && !done && descents < mostDescents; i++) {
            start.accept(now);
            descend();
        }
        int failures = 0;
        while (!done && failures < patience && descents < mostDescents) {
            System.arraycopy(base, 0, now, 0, base.length);
            starts.change(now);
            failures = descend() ? 0 : failures + 1;
        }
    }

    /** Goes down from the arrangement. Tells whether that led lower than the base of this round of changes. */
    private boolean descend() {
        descents++;
        relaxation.relax(now, Relaxation.SOFT);
        double expected = relaxation.relax(now, Relaxation.FIRM);
        boolean lower = expected < baseRadius * (1 - 1e-6);
        if (lower) {
            baseRadius = expected;
            System.arraycopy(now, 0, base, 0, now.length);
        }
        if (Relaxation.isPromising(expected, bestRadius) && relaxation.firm(now, Relaxation.FIRM, bestRadius)) {
            keep();
        }
        return lower;
    }

    private void keep() {
        bestRadius = now[parts.variables - 1];
        best = Optional.of(now.clone());
        done = enough.test(bestRadius * unit);
    }
}
