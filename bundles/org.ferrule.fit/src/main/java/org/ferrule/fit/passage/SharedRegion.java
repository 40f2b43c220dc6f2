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
    private static final Comparator<Contact> BY_WORST = Comparator.comparing(contact -> contact.clearance().worst());

    private final Place place;
    private final Stretch device;
    private final Packings packings;
    private final Across across;
    private final List<Window> strips;

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
        this.strips = Window.of(place.bore(), device, travel).strips(across.mayBeCut() ? STRIPS : 1);
    }

    /** The contact of least worst-case clearance; where that is not worked out exactly, it is too small. */
    Contact tightest() {
        return strips.stream().map(this::tightest).min(BY_WORST).orElseThrow();
    }

    private Contact tightest(Window strip) {
        if (across.isConstant()) {
            return contactAt(strip.x0(), strip.s0());
        }
        Contact corner = strip.corners().stream().map(c -> contactAt(c[0], c[1])).min(BY_WORST).orElseThrow();
        if (across.isLinear()) {
            return corner;
        }
        Contact bound = bound(strip, corner);
        return BY_WORST.compare(bound, corner) < 0 ? bound : corner;
    }

    private Contact contactAt(long lumenStation, long deviceStation) {
        Length x = new Length(lumenStation);
        Length s = new Length(deviceStation);
        List<Profile> parts = across.at(x, s);
        Need need = Need.of(parts, parts, packings);
        Optional<Figure> alone = device.diameter().map(d -> device.at(s, RoundingMode.CEILING));
        boolean proved = need.proved() && across.isProved()
                && (device.proved() || alone.get().centre().compareTo(need.figure().centre()) <= 0);
        return new Contact(place.bore(), device, x, s, place.bore().at(x, RoundingMode.FLOOR),
                alone.map(need.figure()::max).orElse(need.figure()), place.beside(), proved);
    }

    /** The narrowest lumen and the widest parts of a strip as if they met, told at one of its corners. */
    private Contact bound(Window strip, Contact corner) {
        Length x0 = new Length(strip.x0());
        Length x1 = new Length(strip.x1());
        Length s0 = new Length(strip.s0());
        Length s1 = new Length(Math.min(strip.s1(), strip.travel() - strip.x0()));
        Figure need = Need.of(across.widest(x0, x1, s0, s1), across.narrowest(x0, x1, s0, s1), packings).figure();
        Figure lumen = place.bore().at(x0, RoundingMode.FLOOR).min(place.bore().at(x1, RoundingMode.FLOOR));
        return new Contact(place.bore(), device, corner.lumenStation(), corner.deviceStation(), lumen,
                need.max(corner.deviceFigure()), place.beside(), false);
    }

    /** Hands over candidates for the first and the last contact at which an overlap is proved. */
    void overlaps(Consumer<Contact> found) {
        for (Window strip : strips) {
            List<long[]> corners = strip.corners();
            for (int i = 0; i < corners.size(); i++) {
                along(corners.get(i), corners.get((i + 1) % corners.size()), found);
            }
        }
    }

    private void along(long[] here, long[] next, Consumer<Contact> found) {
        boolean overlapsHere = overlaps(here);
        if (overlapsHere) {
            found.accept(contactAt(here[0], here[1]));
        }
        if (!across.isConstant() && overlapsHere != overlaps(next)) {
            long[] crossing = overlapsHere ? crossing(here, next) : crossing(next, here);
            found.accept(contactAt(crossing[0], crossing[1]));
        }
    }

    private boolean overlaps(long[] at) {
        Length x = new Length(at[0]);
        Figure lumen = place.bore().at(x, RoundingMode.FLOOR);
        Length most = lumen.centreAssumed() ? lumen.high() : lumen.centre();
        return Need.atLeast(across.at(x, new Length(at[1])), packings).compareTo(most) > 0;
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
