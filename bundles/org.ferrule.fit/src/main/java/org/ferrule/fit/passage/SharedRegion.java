/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/**
 * The contacts that one stretch of a device makes with a place of the way in which others lie. What they need together
 * does not run linearly where something tapers; there the place is taken in strips, each with the narrowest lumen and
 * the widest parts that are anywhere in it. An overlap is told at single stations only.
 */
final class SharedRegion {
    /** Into how many strips a place is cut in which something tapers. */
    private static final int STRIPS = 16;
    /** How exactly the place of a stop in a taper is found: a micrometre, on the side that overlaps. */
    private static final long RESOLUTION = 3000;

    private final Place place;
    private final Stretch device;
    private final Packings packings;
    private final Across across;
    private final Window whole;
    private final List<Window> strips;
    /** What is needed where that is the same at all stations; null before it was asked for, and where it is not. */
    private Need needAnywhere;

    /**
     * The region of a place whose neighbours are all known. A device whose figures are unknown counts as nothing.
     *
     * @param travel more than what the two need to meet
     */
    SharedRegion(Place place, Stretch device, Length travel, Packings packings) {
        this.place = place;
        this.device = device;
        this.packings = packings;
        this.across = new Across(place, device);
        this.whole = Window.of(place.bore(), device, travel);
        this.strips = whole.strips(across.mayBeCut() ? STRIPS : 1);
    }

    /** Whether a worst-case clearance of less than that may be found anywhere in it. */
    boolean mayLeaveLessThan(Length clearance) {
        return mayLeaveLessThan(clearance, whole);
    }

    private boolean mayLeaveLessThan(Length clearance, Window part) {
        Length room = lumen(part, Figure::low).minus(clearance);
        return device.diameter().filter(d -> d.widest().compareTo(room) > 0).isPresent()
                || Need.mayExceed(across.widest(part), room, packings);
    }

    /** The smallest diameter of the lumen in a part. */
    private Length lumen(Window part, Function<Figure, Length> lane) {
        return lane.apply(lumenAt(part.x0())).min(lane.apply(lumenAt(part.x1())));
    }

    private Figure lumenAt(long x) {
        return place.bore().at(new Length(x), RoundingMode.FLOOR);
    }

    /**
     * The contact of least worst-case clearance, if that is less than what is known; where it is not worked out
     * exactly, it is too small.
     */
    Optional<Contact> tightest(Optional<Length> known) {
        Optional<Contact> tightest = Optional.empty();
        for (Window strip : strips) {
            Optional<Length> least = tightest.map(c -> c.clearance().worst()).or(() -> known);
            if (least.isEmpty() || strips.size() == 1 || mayLeaveLessThan(least.get(), strip)) {
                Contact here = tightest(strip);
                boolean less = least.isEmpty() || here.clearance().worst().compareTo(least.get()) < 0;
                tightest = less ? Optional.of(here) : tightest;
            }
        }
        return tightest;
    }

    private Contact tightest(Window strip) {
        if (across.isConstant()) {
            return contactAt(strip.x0(), strip.s0());
        }
        long[] corner = strip.corners().stream().min(Comparator.comparing(this::worstAt)).orElseThrow();
        Contact contact = contactAt(corner[0], corner[1]);
        if (across.isLinear()) {
            return contact;
        }
        Contact bound = bound(strip, contact);
        return bound.clearance().worst().compareTo(contact.clearance().worst()) < 0 ? bound : contact;
    }

    private Length worstAt(long[] at) {
        return lumenAt(at[0]).low().minus(Need.high(partsAt(at[0], at[1]), packings));
    }

    private List<Profile> partsAt(long x, long s) {
        return across.at(new Length(x), new Length(s));
    }

    private Contact contactAt(long x, long s) {
        Need need = needAt(x, s);
        Optional<Figure> alone = device.diameter().map(d -> device.at(new Length(s), RoundingMode.CEILING));
        boolean proved = need.proved() && across.isProved()
                && (device.proved() || alone.get().centre().compareTo(need.figure().centre()) <= 0);
        return new Contact(place.bore(), device, new Length(x), new Length(s), lumenAt(x),
                alone.map(need.figure()::max).orElse(need.figure()), place.beside(), proved);
    }

    private Need needAt(long x, long s) {
        if (needAnywhere != null) {
            return needAnywhere;
        }
        List<Profile> parts = partsAt(x, s);
        Need need = Need.of(parts, parts, packings);
        needAnywhere = across.isConstant() ? need : null;
        return need;
    }

    /** The narrowest lumen and the widest parts of a strip as if they met, told at one of its corners. */
    private Contact bound(Window strip, Contact corner) {
        Figure need = Need.of(across.widest(strip), across.narrowest(strip), packings).figure();
        return new Contact(place.bore(), device, corner.lumenStation(), corner.deviceStation(),
                lumenAt(strip.x0()).min(lumenAt(strip.x1())), need.max(corner.deviceFigure()), place.beside(), false);
    }

    /**
     * Hands over candidates for the first and the last contact at which an overlap is proved.
     *
     * @param wanted whether a contact after that travel could be the first or the last one
     */
    void overlaps(Predicate<Length> wanted, Consumer<Contact> found) {
        strips.stream().filter(this::mayOverlap).forEach(strip -> overlaps(strip.corners(), wanted, found));
    }

    private void overlaps(List<long[]> corners, Predicate<Length> wanted, Consumer<Contact> found) {
        boolean overlapsAtFirst = overlaps(corners.get(0));
        boolean overlapsHere = overlapsAtFirst;
        for (int i = 0; i < corners.size(); i++) {
            long[] here = corners.get(i);
            long[] next = corners.get((i + 1) % corners.size());
            boolean isLast = i + 1 == corners.size();
            boolean overlapsNext = isLast || across.isConstant() ? overlapsAtFirst : overlaps(next);
            if (overlapsHere && wanted.test(travel(here))) {
                found.accept(contactAt(here[0], here[1]));
            }
            // what lies between two travels is no more wanted than both of them
            if (overlapsHere != overlapsNext && (wanted.test(travel(here)) || wanted.test(travel(next)))) {
                long[] crossing = overlapsHere ? crossing(here, next) : crossing(next, here);
                found.accept(contactAt(crossing[0], crossing[1]));
            }
            overlapsHere = overlapsNext;
        }
    }

    private static Length travel(long[] at) {
        return new Length(at[0] + at[1]);
    }

    private boolean mayOverlap(Window strip) {
        return Need.mayOverlap(across.widest(strip), lumen(strip, SharedRegion::mostOf), packings);
    }

    /** A lumen whose centre is only assumed counts with its upper end. */
    private static Length mostOf(Figure lumen) {
        return lumen.centreAssumed() ? lumen.high() : lumen.centre();
    }

    /** Only parts that are proved to be as thick prove an overlap. */
    private boolean overlaps(long[] at) {
        return Need.overlap(across.provedAt(new Length(at[0]), new Length(at[1])), mostOf(lumenAt(at[0])), packings);
    }

    /** A pair of stations that overlaps, no farther than the resolution from one that does not. */
    private long[] crossing(long[] overlapping, long[] free) {
        long[] in = overlapping;
        long[] out = free;
        while (Math.abs(in[0] - out[0]) > RESOLUTION || Math.abs(in[1] - out[1]) > RESOLUTION) {
            long[] middle = { (in[0] + out[0]) / 2, (in[1] + out[1]) / 2 };
            if (overlaps(middle)) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }
}
