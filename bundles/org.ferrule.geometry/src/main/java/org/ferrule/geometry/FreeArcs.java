/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Where the centre of a free disc may lie while it touches a rigid set and overlaps none of its discs. */
final class FreeArcs {
    /** Overlap that counts as touching, as part of radius and coordinates: less than the margin of {@link Bounds}. */
    private static final double TOUCH = 1e-14;

    private final FixedDiscs rigid;
    private final double free;

    FreeArcs(FixedDiscs rigid, double freeRadius) {
        this.rigid = rigid;
        this.free = freeRadius;
    }

    /** Returns the arcs that make up the boundary of the forbidden places. */
    List<Arc> all() {
        List<Arc> arcs = new ArrayList<>();
        for (int i = 0; i < rigid.size(); i++) {
            double[] cuts = cuts(i);
            for (int cut = 0; cut < cuts.length; cut++) {
                double to = cut + 1 < cuts.length ? cuts[cut + 1] : cuts[0] + 2 * Math.PI;
                arcs.add(new Arc(i, radius(i), cuts[cut], to));
            }
        }
        return arcs.stream().filter(arc -> isFree(arc.x(rigid, arc.middle()), arc.y(rigid, arc.middle()))).toList();
    }

    /** Tells whether the free disc may have its centre here. */
    boolean isFree(double x, double y) {
        double rounding = TOUCH * (Math.abs(x) + Math.abs(y));
        return IntStream.range(0, rigid.size())
                .allMatch(i -> rigid.distance(i, x, y) >= radius(i) * (1 - TOUCH) - rounding);
    }

    private double radius(int i) {
        return rigid.radius(i) + free;
    }

    /** Returns the angles, ascending, at which another disc comes into touch; any one angle if none does. */
    private double[] cuts(int i) {
        double[] cuts = IntStream.range(0, rigid.size()).filter(j -> j != i).boxed()
                .flatMapToDouble(j -> Arrays.stream(crossings(i, j))).sorted().toArray();
        return cuts.length == 0 ? DoubleStream.of(0).toArray() : cuts;
    }

    private double[] crossings(int i, int j) {
        double distance = rigid.distance(i, j);
        double cosine = (distance * distance + radius(i) * radius(i) - radius(j) * radius(j))
                / (2 * distance * radius(i));
        // Not a number where the centres coincide or both discs are points.
        if (!(Math.abs(cosine) <= 1)) {
            return new double[0];
        }
        double towards = Math.atan2(rigid.y(j) - rigid.y(i), rigid.x(j) - rigid.x(i));
        double half = Math.acos(cosine);
        return new double[] { oneTurn(towards - half), oneTurn(towards + half) };
    }

    private static double oneTurn(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }
}
