/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import org.ferrule.quantity.Length;

/**
 * A bound by the angles at which discs are seen from the centre of their circle. In a circle of diameter D the centres
 * of discs a and b lie at most A = (D-a)/2 and B = (D-b)/2 from its centre and at least s = (a+b)/2 from each other. If
 * A and B are less than s, the angle between them is least with both at the rim, by the law of cosines; else it may be
 * zero. The angles from each disc to the next round the centre make up one turn, and from a disc to any later one it is
 * no further than by way of those between. A diameter for which no order of the discs leaves a turn is too small. The
 * bound is exact where each disc of a ring touches the rim and both its neighbours.
 */
final class RingBound {
    private static final int MOST_DISCS = 7;
    private static final double ROUNDING = 1e-15;
    private static final double TURN = 2 * Math.PI * (1 + 1e-13);

    private final long[] diameters;
    private final double[][] angle;
    private final int[] order;
    private final boolean[] used;
    /** The longest way, over some discs, from one place in the order to a later one. */
    private final double[][] way;

    /** Prepares the bound for the largest of some discs. */
    RingBound(List<Length> falling) {
        diameters = falling.stream().limit(MOST_DISCS).mapToLong(Length::thirdNanometres).toArray();
        angle = new double[diameters.length][diameters.length];
        order = new int[diameters.length];
        used = new boolean[diameters.length];
        way = new double[diameters.length][diameters.length];
    }

    /** Tells whether it is proved that no circle of this diameter holds the discs. */
    boolean excludes(Length diameter) {
        for (int i = 0; i < diameters.length; i++) {
            for (int j = 0; j < i; j++) {
                angle[i][j] = angle(diameter.thirdNanometres(), diameters[i], diameters[j]);
                angle[j][i] = angle[i][j];
            }
        }
        return !hasOrder(1);
    }

    private static double angle(long diameter, long small, long large) {
        double fromA = diameter - small;
        double fromB = diameter - large;
        double apart = small + large;
        if (fromA + fromB < apart) {
            return TURN;
        }
        if (fromA >= apart) {
            return 0;
        }
        double product = 2 * fromA * fromB;
        double squares = fromA * fromA + fromB * fromB;
        double cosine = (squares - apart * apart) / product + ROUNDING * (squares + apart * apart) / product;
        return cosine < 1 ? StrictMath.acos(cosine) * (1 - ROUNDING) : 0;
    }

    /** Tells whether the discs that are not yet in the order can follow the first so many; disc 0 is the first. */
    private boolean hasOrder(int count) {
        if (count == order.length) {
            return true;
        }
        for (int disc = 1; disc < order.length; disc++) {
            if (!used[disc] && follows(disc, count)) {
                used[disc] = true;
                boolean found = hasOrder(count + 1);
                used[disc] = false;
                if (found) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean follows(int disc, int count) {
        order[count] = disc;
        for (int from = 0; from < count; from++) {
            double longest = 0;
            for (int by = from; by < count; by++) {
                longest = Math.max(longest, way[from][by] + angle[order[by]][disc]);
            }
            way[from][count] = longest;
            if (longest + angle[disc][order[from]] > TURN) {
                return false;
            }
        }
        return true;
    }
}
