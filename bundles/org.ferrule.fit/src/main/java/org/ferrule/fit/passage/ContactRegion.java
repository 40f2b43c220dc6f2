/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.ferrule.fit.verdict.Lane;
import org.ferrule.quantity.Length;

/**
 * All the contacts that one stretch of a device makes with one stretch of a lumen while its leading end travels a given
 * distance: the pairs of stations (x, s) in a rectangle with x + s at most the travel. Diameters are linear in x and s,
 * so extremes lie at the corners of that polygon and at the points of its edges where the clearance changes sign.
 */
final class ContactRegion {
    private final Stretch lumen;
    private final Stretch device;
    private final List<long[]> corners;

    private ContactRegion(Stretch lumen, Stretch device, List<long[]> corners) {
        this.lumen = lumen;
        this.device = device;
        this.corners = corners;
    }

    /** The region, without corners when the travel ends before the two stretches meet. */
    static ContactRegion of(Stretch lumen, Stretch device, Length travel) {
        return new ContactRegion(lumen, device, corners(lumen, device, travel.thirdNanometres()));
    }

    boolean isEmpty() {
        return corners.isEmpty();
    }

    boolean isKnown() {
        return lumen.diameter().isPresent() && device.diameter().isPresent();
    }

    /** How far the leading end has come when the stretches' nearer ends meet. */
    Length firstTravel() {
        return lumen.from().plus(device.from());
    }

    Stretch lumen() {
        return lumen;
    }

    Stretch device() {
        return device;
    }

    private Contact first() {
        return contactAt(corners.get(0));
    }

    /** The contact of least clearance in that lane. */
    Contact tightest(Lane lane) {
        if (isConstant()) {
            return first();
        }
        Contact tightest = first();
        for (long[] corner : corners) {
            Contact here = contactAt(corner);
            if (here.clearance().in(lane).compareTo(tightest.clearance().in(lane)) < 0) {
                tightest = here;
            }
        }
        return tightest;
    }

    /** Hands over candidates for the first and the last contact at which that lane's clearance is below zero. */
    void overlaps(Lane lane, Consumer<Contact> found) {
        if (isConstant() && !first().clearance().in(lane).isNegative()) {
            return;
        }
        for (int i = 0; i < corners.size(); i++) {
            Contact here = contactAt(corners.get(i));
            Contact next = contactAt(corners.get((i + 1) % corners.size()));
            boolean overlapsHere = here.clearance().in(lane).isNegative();
            if (overlapsHere) {
                found.accept(here);
            }
            if (overlapsHere != next.clearance().in(lane).isNegative()) {
                found.accept(overlapsHere ? crossing(here, next, lane) : crossing(next, here, lane));
            }
        }
    }

    private boolean isConstant() {
        return lumen.diameter().orElseThrow().isConstant() && device.diameter().orElseThrow().isConstant();
    }

    /** The contact between a place that overlaps and one that does not at which the overlap begins. */
    private Contact crossing(Contact overlapping, Contact free, Lane lane) {
        BigDecimal overlap = thirdNanometres(overlapping.clearance().in(lane));
        BigDecimal rise = thirdNanometres(free.clearance().in(lane)).subtract(overlap);
        long x = onTheWay(overlapping.lumenStation(), free.lumenStation(), overlap.negate(), rise);
        long s = onTheWay(overlapping.deviceStation(), free.deviceStation(), overlap.negate(), rise);
        return contactAt(new long[] { x, s });
    }

    /** Rounds towards the start of the way, which overlaps. */
    private static long onTheWay(Length from, Length to, BigDecimal part, BigDecimal whole) {
        BigDecimal way = thirdNanometres(to.minus(from)).multiply(part).divide(whole, 0, RoundingMode.DOWN);
        return from.thirdNanometres() + way.longValueExact();
    }

    private static BigDecimal thirdNanometres(Length length) {
        return BigDecimal.valueOf(length.thirdNanometres());
    }

    /** Lumens are rounded down and devices up, so that no clearance comes out too large. */
    private Contact contactAt(long[] corner) {
        Length x = new Length(corner[0]);
        Length s = new Length(corner[1]);
        return new Contact(lumen, device, x, s, lumen.at(x, RoundingMode.FLOOR), device.at(s, RoundingMode.CEILING));
    }

    /** Corners in order around the polygon; none when the travel ends before the stretches meet. */
    private static List<long[]> corners(Stretch lumen, Stretch device, long travel) {
        long x0 = lumen.from().thirdNanometres();
        long x1 = lumen.to().thirdNanometres();
        long s0 = device.from().thirdNanometres();
        long s1 = device.to().thirdNanometres();
        if (x0 + s0 >= travel) {
            return List.of();
        }
        List<long[]> corners = new ArrayList<>(5);
        corners.add(new long[] { x0, s0 });
        corners.add(new long[] { Math.min(x1, travel - s0), s0 });
        if (x1 + s1 <= travel) {
            corners.add(new long[] { x1, s1 });
        } else {
            addCutCorners(corners, x0, x1, s0, s1, travel);
        }
        corners.add(new long[] { x0, Math.min(s1, travel - x0) });
        return corners;
    }

    private static void addCutCorners(List<long[]> corners, long x0, long x1, long s0, long s1, long travel) {
        if (x1 + s0 < travel) {
            corners.add(new long[] { x1, travel - x1 });
        }
        if (x0 + s1 < travel) {
            corners.add(new long[] { travel - s1, s1 });
        }
    }
}
