/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.ferrule.quantity.Length;

/**
 * A stretch of the way with what lies in it all along.
 *
 * @param bore the stretch of the lumen
 * @param beside what lies in it; the ends of none of them lie within
 */
record Place(Stretch bore, List<Neighbour> beside) {

    Place {
        beside = List.copyOf(beside);
    }

    /**
     * Cuts a stretch of a lumen where something begins or ends to lie in it.
     *
     * @param bore the stretch
     * @param devices the stretches of each device that lies there; where those of one device overlap, each is a place
     *                of its own
     */
    static List<Place> cut(Stretch bore, List<List<Neighbour>> devices) {
        TreeSet<Length> cuts = new TreeSet<>(List.of(bore.from(), bore.to()));
        devices.stream().flatMap(List::stream).flatMap(n -> Stream.of(n.nearerEnd(), n.fartherEnd()))
                .filter(x -> x.compareTo(bore.from()) > 0 && x.compareTo(bore.to()) < 0).forEach(cuts::add);
        List<Length> ends = new ArrayList<>(cuts);
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < Math.max(1, ends.size() - 1); i++) {
            Stretch window = bore.between(ends.get(i), ends.get(Math.min(i + 1, ends.size() - 1)), RoundingMode.FLOOR);
            combinations(window, devices).forEach(beside -> places.add(new Place(window, beside)));
        }
        return places;
    }

    /** What may lie in a window: of each device one of the stretches that lie there. */
    private static List<List<Neighbour>> combinations(Stretch window, List<List<Neighbour>> devices) {
        List<List<Neighbour>> combined = List.of(List.of());
        for (List<Neighbour> device : devices) {
            List<Neighbour> there = device.stream().filter(n -> n.liesIn(window.from(), window.to())).toList();
            if (!there.isEmpty()) {
                combined = combined.stream().flatMap(c -> there.stream().map(n -> plus(c, n))).toList();
            }
        }
        return combined;
    }

    private static List<Neighbour> plus(List<Neighbour> some, Neighbour another) {
        return Stream.concat(some.stream(), Stream.of(another)).toList();
    }

    boolean hasUnknown() {
        return beside.stream().anyMatch(Neighbour::isUnknown);
    }

    /** The same place with only those in it whose figures are known. */
    Place known() {
        return hasUnknown() ? new Place(bore, beside.stream().filter(n -> !n.isUnknown()).toList()) : this;
    }
}
