/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * Finds the place of a free disc beside a rigid set that needs the smallest circle round both, by branch and bound.
 *
 * <p>The radius of the smallest circle is a convex function of the disc's centre, least where the centre lies in the
 * middle of the circle round the set. So the best place is that middle, if the disc fits there, or else the disc
 * touches the set: its centre lies on one of the {@link FreeArcs}. On an arc the function is never below its tangent
 * plane in the middle of the arc, which the weights of the circle's support give. Arcs are halved, the one with the
 * least bound first, until bound and best place are 1 nm apart. A disc almost as free to move as round a single disc
 * is the slow case; after 20000 places the search stops, with bounds that hold but lie further apart.
 */
final class FreeDiscSearch {
    /** In thirds of a nanometre of diameter. */
    private static final double TOLERANCE = 3;
    /** More than the radius may change over the bit of an arc that the rounding of its ends leaves out. */
    private static final double SLIVER = 1;
    private static final int MOST_PLACES = 20_000;

    private final FixedDiscs rigid;
    private final FixedDiscs all;
    private final FreeArcs free;
    private final int freeDisc;
    private final PriorityQueue<Branch> branches = new PriorityQueue<>(Comparator.comparingDouble(Branch::lower));
    private double least;
    private double bestX;
    private double bestY;
    private double bestReach = Double.POSITIVE_INFINITY;
    private int places;

    /** An arc with the least radius that any place on it can need. */
    private record Branch(Arc arc, double lower) {
    }

    /**
     * The best place found.
     *
     * @param discs all discs, the free one last
     * @param rim the smallest circle round them
     * @param lower the radius that every place needs
     * @param places how many places were tried
     */
    record Result(FixedDiscs discs, RimSearch.Result rim, double lower, int places) {
    }

    private FreeDiscSearch(FixedDiscs rigid, double radius) {
        this.rigid = rigid;
        this.all = rigid.plus(radius);
        this.free = new FreeArcs(rigid, radius);
        this.freeDisc = rigid.size();
    }

    /** Searches the best place for a disc of this radius, in units of {@link FixedDiscs}. */
    static Result search(FixedDiscs rigid, double radius) {
        return new FreeDiscSearch(rigid, radius).search();
    }

    private Result search() {
        startInTheMiddle();
        for (Arc arc : free.all()) {
            place(arc.x(rigid, arc.from()), arc.y(rigid, arc.from()));
            branch(arc);
        }
        while (bestReach - lower() > TOLERANCE && places < MOST_PLACES) {
            Arc arc = branches.remove().arc();
            branch(arc.firstHalf());
            branch(arc.secondHalf());
        }
        double lower = lower() - SLIVER;
        return new Result(all, place(bestX, bestY), lower, places);
    }

    /** The circle round the set alone, and the disc beside each disc of it, are bounds whatever the place. */
    private void startInTheMiddle() {
        RimSearch.Result alone = RimSearch.search(rigid);
        least = alone.bound().lower();
        for (int i = 0; i < rigid.size(); i++) {
            least = Math.max(least, rigid.radius(i) + all.radius(freeDisc));
        }
        place(alone.best().x(), alone.best().y());
    }

    private double lower() {
        double unsearched = branches.isEmpty() ? bestReach : branches.peek().lower();
        return Math.min(bestReach, Math.max(least, unsearched));
    }

    private void branch(Arc arc) {
        double x = arc.x(rigid, arc.middle());
        double y = arc.y(rigid, arc.middle());
        Rim rim = place(x, y).bound();
        double direction = Math.atan2(y - rim.y(), x - rim.x());
        double lower = rim.lower() + rim.weight(freeDisc) * arc.leastMovement(direction);
        if (lower < bestReach) {
            branches.add(new Branch(arc, lower));
        }
    }

    /** Puts the disc there and keeps the place if it is allowed and the best so far. */
    private RimSearch.Result place(double x, double y) {
        all.move(freeDisc, x, y);
        RimSearch.Result rim = RimSearch.search(all);
        places++;
        if (rim.reach() < bestReach && free.isFree(x, y)) {
            bestReach = rim.reach();
            bestX = x;
            bestY = y;
        }
        return rim;
    }
}
