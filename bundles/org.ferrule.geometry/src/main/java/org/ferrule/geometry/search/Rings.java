/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.ArrayList;
import java.util.List;

/**
 * All ways in which a few discs can follow each other round the rim of the circle, with none, one or two of them inside.
 * The best arrangement of a few discs is mostly one of these, and chance alone finds a certain order late.
 */
final class Rings {
    /** The most discs for which the orders are few enough to try all. */
    static final int MOST = 6;
    private static final int MOST_INSIDE = 2;
    private static final int LEAST_AT_RIM = 3;

    private final double[] radius;
    private final List<int[]> orders = new ArrayList<>();

    /** Prepares the orders of discs with these radii; none of more discs than there may be. */
    Rings(double[] radius) {
        this.radius = radius;
        for (int smallest = 0; radius.length <= MOST && smallest < 1 << radius.length; smallest++) {
            int inside = Integer.reverse(smallest) >>> Integer.SIZE - radius.length;
            int atRim = radius.length - Integer.bitCount(inside);
            if (Integer.bitCount(inside) <= MOST_INSIDE && atRim >= LEAST_AT_RIM) {
                follow(new int[atRim], 0, inside);
            }
        }
    }

    /** Adds the orders of the discs that are not used yet; each round the other way counts as the same. */
    private void follow(int[] order, int count, int used) {
        if (count == order.length) {
            if (order[1] < order[count - 1]) {
                orders.add(order.clone());
            }
            return;
        }
        for (int disc = 0; disc < radius.length; disc++) {
            if ((used >> disc & 1) == 0) {
                order[count] = disc;
                follow(order, count + 1, used | 1 << disc);
                if (count == 0) {
                    return;
                }
            }
        }
    }

    /** Returns how many there are. */
    int size() {
        return orders.size();
    }

    /** Writes the places of the discs at the rim of a circle, and of the others about its middle. */
    void write(int which, double circle, double[] variables) {
        int[] order = orders.get(which);
        double around = 0;
        for (int disc : order) {
            around += radius[disc];
        }
        for (int i = 0; i < radius.length; i++) {
            variables[2 * i] = (i % 2 == 0 ? 0.1 : -0.1) * radius[i];
            variables[2 * i + 1] = 0;
        }
        double behind = 0;
        for (int disc : order) {
            double angle = Math.PI / around * (2 * behind + radius[disc]);
            variables[2 * disc] = (circle - radius[disc]) * StrictMath.cos(angle);
            variables[2 * disc + 1] = (circle - radius[disc]) * StrictMath.sin(angle);
            behind += radius[disc];
        }
        variables[2 * radius.length] = circle;
    }
}
