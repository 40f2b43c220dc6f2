/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.math.BigInteger;
import java.util.Arrays;
import org.ferrule.geometry.RimSearch.Result;
import org.ferrule.quantity.Length;

/** Turns the circle that a {@link RimSearch} found into bounds of its diameter. */
final class RimBounds {
    private final FixedDiscs discs;
    private final int whole;
    private final Rim bound;
    private final Rim centre;
    private final Length lower;
    private final Length upper;

    /**
     * Computes the bounds.
     *
     * @param discs the discs
     * @param found the circle round them
     * @param whole how many of the discs, from the first, have whole coordinates
     */
    RimBounds(FixedDiscs discs, Result found, int whole) {
        this.discs = discs;
        this.whole = whole;
        this.bound = found.bound();
        Bounds support = support();
        Length aboutBound = support.upper().max(Bounds.up(reachBeyondSupport()));
        Length aboutBest = Bounds.up(found.reach());
        boolean same = aboutBound.compareTo(aboutBest) <= 0;
        lower = support.lower();
        upper = same ? aboutBound : aboutBest;
        centre = same ? bound : found.best();
    }

    /** Returns a diameter below which no circle encloses the discs where they lie. */
    Length lower() {
        return lower;
    }

    /** Returns the diameter of a circle that encloses the discs. */
    Length upper() {
        return upper;
    }

    /** Returns the candidate about whose centre the circle of the upper bound lies. */
    Rim centre() {
        return centre;
    }

    /** Tells whether the discs with whole coordinates alone determine the circle. */
    boolean isRigid() {
        return Arrays.stream(bound.support()).allMatch(i -> i < whole);
    }

    private Bounds support() {
        int[] support = bound.support();
        if (support.length == 1) {
            return Bounds.exactly(new Length((long) discs.radius(support[0])));
        }
        return support.length == 2 && isRigid() ? pair(support[0], support[1])
                : new Bounds(Bounds.down(bound.lower()), Bounds.up(bound.reach(discs)));
    }

    /** The diameter round two discs is half of what the doubled distance and the diameters add up to. */
    private Bounds pair(int i, int j) {
        BigInteger x = whole(discs.x(j) - discs.x(i));
        BigInteger y = whole(discs.y(j) - discs.y(i));
        return Bounds.ofRoot(whole(discs.radius(i) + discs.radius(j)), x.multiply(x).add(y.multiply(y)),
                BigInteger.TWO);
    }

    private static BigInteger whole(double number) {
        return BigInteger.valueOf((long) number);
    }

    private double reachBeyondSupport() {
        double reach = 0;
        for (int i = 0; i < discs.size(); i++) {
            int disc = i;
            if (Arrays.stream(bound.support()).noneMatch(s -> s == disc)) {
                reach = Math.max(reach, discs.reach(i, bound.x(), bound.y()));
            }
        }
        return reach;
    }
}
