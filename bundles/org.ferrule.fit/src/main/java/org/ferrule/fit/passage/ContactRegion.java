/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
    private final Length travel;

    /**
     * The region of two stretches of known diameters.
     *
     * @param travel more than what the two need to meet
     */
    ContactRegion(Stretch lumen, Stretch device, Length travel) {
        this.lumen = lumen;
        this.device = device;
        this.travel = travel;
    }

    /** Where their nearer ends meet. */
    private Contact first() {
        return contactAt(lumen.from(), device.from());
    }

    /** The contact of least clearance in that lane. */
    Contact tightest(Lane lane) {
        Contact tightest = first();
        if (isConstant()) {
            return tightest;
        }
        for (long[] corner : corners()) {
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
        List<long[]> corners = corners();
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
        return contactAt(new Length(x), new Length(s));
    }

    /** Rounds towards the start of the way, which overlaps. */
    private static long onTheWay(Length from, Length to, BigDecimal part, BigDecimal whole) {
        BigDecimal way = thirdNanometres(to.minus(from)).multiply(part).divide(whole, 0, RoundingMode.DOWN);
        return from.thirdNanometres() + way.longValueExact();
    }

    private static BigDecimal thirdNanometres(Length length) {
        return BigDecimal.valueOf(length.thirdNanometres());
    }

    private Contact contactAt(long[] corner) {
        return contactAt(new Length(corner[0]), new Length(corner[1]));
    }

    /** Lumens are rounded down and devices up, so that no clearance comes out too large. */
    private Contact contactAt(Length x, Length s) {
        return new Contact(lumen, device, x, s, lumen.at(x, RoundingMode.FLOOR), device.at(s, RoundingMode.CEILING));
    }

    private List<long[]> corners() {
        return Window.of(lumen, device, travel).corners();
    }
}
