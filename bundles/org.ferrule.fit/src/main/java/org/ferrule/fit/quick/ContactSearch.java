/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

/**
 * The contacts of one stretch of a device with one stretch of a lumen where one of them tapers: the same corners, in the
 * same order and with the same rounding, as {@code ContactRegion} of the solver has them, in plain numbers. A scratch
 * pad for one thread.
 */
final class ContactSearch {
    private final long[] xs = new long[5];
    private final long[] ss = new long[5];
    private int corners;
    private FlatStretches lumen;
    private FlatStretches device;
    private int l;
    private int d;
    private boolean bestLane;

    /** Where the contact lies that was found. */
    long x;
    long s;

    /** Takes up two stretches that meet before the travel ends. */
    void of(FlatStretches around, int lumenIndex, FlatStretches inside, int deviceIndex, long travel) {
        lumen = around;
        l = lumenIndex;
        device = inside;
        d = deviceIndex;
        bestLane = around.isAssumed(l) || inside.isAssumed(d);
        long x0 = around.from(l);
        long x1 = around.to(l);
        long s0 = inside.from(d);
        long s1 = inside.to(d);
        corners = 0;
        corner(x0, s0);
        corner(Math.min(x1, travel - s0), s0);
        if (x1 + s1 <= travel) {
            corner(x1, s1);
        } else {
            if (x1 + s0 < travel) {
                corner(x1, travel - x1);
            }
            if (x0 + s1 < travel) {
                corner(travel - s1, s1);
            }
        }
        corner(x0, Math.min(s1, travel - x0));
    }

    private void corner(long cornerX, long cornerS) {
        xs[corners] = cornerX;
        ss[corners++] = cornerS;
    }

    /** Finds the contact of least clearance in the worst case. */
    int tightest() {
        x = xs[0];
        s = ss[0];
        int least = worst(x, s);
        for (int i = 1; i < corners; i++) {
            int here = worst(xs[i], ss[i]);
            if (here < least) {
                least = here;
                x = xs[i];
                s = ss[i];
            }
        }
        return least;
    }

    /** Whether the parts overlap for sure, at any corner. */
    boolean overlaps() {
        for (int i = 0; i < corners; i++) {
            if (deciding(xs[i], ss[i]) < 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * Finds the first contact at which the parts overlap for sure.
     *
     * @param before a travel; what comes later is of no interest
     * @return whether there is one before that
     */
    boolean firstOverlap(long before) {
        long first = before;
        int atFirst = deciding(xs[0], ss[0]);
        int here = atFirst;
        for (int i = 0; i < corners; i++) {
            int next = i + 1 == corners ? 0 : i + 1;
            int there = next == 0 ? atFirst : deciding(xs[next], ss[next]);
            if (here < 0) {
                first = earlier(first, xs[i], ss[i]);
            }
            if (here < 0 != there < 0) {
                first = here < 0 ? crossing(first, i, here, next, there) : crossing(first, next, there, i, here);
            }
            here = there;
        }
        return first < before;
    }

    /** The place between one that overlaps and one that does not where the overlap begins, rounded to the former. */
    private long crossing(long first, int overlapping, int overlap, int free, int clearance) {
        long rise = (long) clearance - overlap;
        return earlier(first, xs[overlapping] + (xs[free] - xs[overlapping]) * -overlap / rise,
                ss[overlapping] + (ss[free] - ss[overlapping]) * -overlap / rise);
    }

    private long earlier(long first, long otherX, long otherS) {
        if (otherX + otherS >= first) {
            return first;
        }
        x = otherX;
        s = otherS;
        return otherX + otherS;
    }

    int worst(long atX, long atS) {
        return down(lumen.startLow(l), lumen.endLow(l), atX) - up(device.startHigh(d), device.endHigh(d), atS);
    }

    int nominal(long atX, long atS) {
        return down(lumen.startCentre(l), lumen.endCentre(l), atX)
                - up(device.startCentre(d), device.endCentre(d), atS);
    }

    /** The clearance that must be negative for a block: the nominal one, or the best where a centre is assumed. */
    private int deciding(long atX, long atS) {
        return bestLane ? down(lumen.startHigh(l), lumen.endHigh(l), atX)
                - up(device.startLow(d), device.endLow(d), atS) : nominal(atX, atS);
    }

    /** What lies in a lumen must not come out too small, nor the lumen too large. */
    private int down(int start, int end, long atX) {
        long part = atX - lumen.from(l);
        long whole = lumen.to(l) - lumen.from(l);
        if (start == end || part == 0) {
            return start;
        }
        return part == whole ? end : (int) (start + Math.floorDiv((end - start) * part, whole));
    }

    private int up(int start, int end, long atS) {
        long part = atS - device.from(d);
        long whole = device.to(d) - device.from(d);
        if (start == end || part == 0) {
            return start;
        }
        return part == whole ? end : (int) (start - Math.floorDiv((start - end) * part, whole));
    }
}
