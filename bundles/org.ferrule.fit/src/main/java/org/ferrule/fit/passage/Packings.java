/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.geometry.Body;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.FreeDisc;
import org.ferrule.geometry.Packing;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Room;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;

/**
 * Smallest circles round bodies that lie side by side, each set of bodies solved once. What is remembered never
 * changes an answer: the same bodies have the same circle, in whatever order they are asked for. Safe to use from many
 * threads; forgets everything when it has become too much.
 */
public final class Packings {
    private static final int MOST = 10_000;
    /** Round two bodies the circle has a closed form, or is as good as one. */
    private static final int CLOSED_FORM = 2;
    /** Beyond that there are too many ways to leave some out. */
    private static final int MOST_BODIES = 6;

    /** Round bodies by falling diameter; the others before them, as they come. */
    private static final Comparator<Body> BY_SIZE = Comparator.comparing(
            body -> body instanceof FreeDisc disc ? disc.diameter().negated() : null,
            Comparator.nullsFirst(Comparator.naturalOrder()));

    private final Map<List<Object>, Enclosure> solved = new ConcurrentHashMap<>();

    /** The smallest circle round bodies; its discs are in any order. */
    Enclosure around(List<Body> bodies) {
        if (bodies.size() < 2) {
            return SideBySide.enclosure(bodies);
        }
        return solved(sorted(bodies));
    }

    private static List<Body> sorted(List<Body> bodies) {
        return bodies.stream().sorted(BY_SIZE).toList();
    }

    /** Whether bodies may not find room in a circle of that diameter; searches only where that is not plain. */
    boolean mayExceed(List<Body> bodies, Length diameter) {
        return SideBySide.inLine(bodies).compareTo(diameter) > 0
                && (SideBySide.twoThickest(bodies).compareTo(diameter) > 0
                        || SideBySide.enough(bodies).compareTo(diameter) > 0 && !isRoomPlain(bodies, diameter)
                                && around(bodies).upperDiameter().compareTo(diameter) > 0);
    }

    /** Whether a short search finds room for bodies and, since no circle counts as smaller, for fewer of them. */
    private boolean isRoomPlain(List<Body> bodies, Length diameter) {
        List<Body> sorted = sorted(bodies);
        Enclosure known = solved.get(key(sorted));
        if (known != null) {
            return known.upperDiameter().compareTo(diameter) <= 0;
        }
        return bodies.size() <= SideBySide.MOST && Packing.room(sorted, diameter) == Room.FOUND
                && fewer(sorted).allMatch(less -> isRoomPlain(less, diameter));
    }

    /** Whether bodies surely do not find room in a circle of that diameter; searches only where that is not plain. */
    boolean exceed(List<Body> bodies, Length diameter) {
        return SideBySide.inLine(bodies).compareTo(diameter) > 0
                && (SideBySide.twoThickest(bodies).compareTo(diameter) > 0
                        || SideBySide.enough(bodies).compareTo(diameter) > 0 && exceedsByMore(bodies, diameter));
    }

    private boolean exceedsByMore(List<Body> bodies, Length diameter) {
        return SideBySide.needed(bodies).compareTo(diameter) > 0
                || around(bodies).lowerDiameter().compareTo(diameter) > 0;
    }

    /** The smallest circle round bodies; its discs are those of the bodies, in the order given. */
    Enclosure placed(List<Body> bodies) {
        int[] order = IntStream.range(0, bodies.size()).boxed().sorted(Comparator.comparing(bodies::get, BY_SIZE))
                .mapToInt(i -> i).toArray();
        List<Body> sorted = IntStream.of(order).mapToObj(bodies::get).toList();
        return restored(solved(sorted), sorted, order);
    }

    private Enclosure solved(List<Body> sorted) {
        List<Object> key = key(sorted);
        Enclosure known = solved.get(key);
        if (known != null) {
            return known;
        }
        Enclosure enclosure = notLessThanForFewer(SideBySide.enclosure(sorted), sorted);
        if (solved.size() >= MOST) {
            solved.clear();
        }
        solved.put(key, enclosure);
        return enclosure;
    }

    private static List<Object> key(List<Body> sorted) {
        List<Object> key = new ArrayList<>(sorted.size());
        sorted.forEach(body -> key.add(body instanceof DiscSet set ? set.discs() : body));
        return key;
    }

    /**
     * A search may find better places for more bodies than for some of them. No circle counts as smaller than that
     * round fewer of the same bodies, so that no answer improves because something else lies there, too.
     */
    private Enclosure notLessThanForFewer(Enclosure found, List<Body> bodies) {
        Length lower = fewer(bodies).map(this::lower).reduce(found.lowerDiameter(), Length::max);
        Length upper = fewer(bodies).filter(less -> !isRoomPlain(less, found.upperDiameter()))
                .map(less -> solved(less).upperDiameter()).reduce(found.upperDiameter(), Length::max);
        return new Enclosure(lower.min(upper), upper, found.discs());
    }

    /** What bodies need at least, as far as that is proved; without a search. */
    Length lowerDiameter(List<Body> bodies) {
        return bodies.size() < 2 || bodies.size() > SideBySide.MOST ? around(bodies).lowerDiameter()
                : lower(sorted(bodies));
    }

    private Length lower(List<Body> sorted) {
        Enclosure known = solved.get(key(sorted));
        return known != null ? known.lowerDiameter()
                : fewer(sorted).map(this::lower).reduce(Packing.lowerDiameter(sorted), Length::max);
    }

    /** The bodies without one of them; none where their circle is exact, or where there would be too many. */
    private static Stream<List<Body>> fewer(List<Body> bodies) {
        boolean isExact = bodies.size() <= CLOSED_FORM || bodies.size() > MOST_BODIES;
        return isExact ? Stream.empty() : IntStream.range(0, bodies.size()).mapToObj(left -> {
            List<Body> fewer = new ArrayList<>(bodies);
            fewer.remove(left);
            return fewer;
        });
    }

    private static Enclosure restored(Enclosure enclosure, List<Body> sorted, int[] order) {
        List<List<PlacedDisc>> restored = new ArrayList<>(Collections.nCopies(order.length, List.of()));
        int next = 0;
        for (int i = 0; i < order.length && next < enclosure.discs().size(); i++) {
            int end = next + discs(sorted.get(i));
            restored.set(order[i], enclosure.discs().subList(next, end));
            next = end;
        }
        return new Enclosure(enclosure.lowerDiameter(), enclosure.upperDiameter(),
                restored.stream().flatMap(List::stream).toList());
    }

    /** How many discs a body is made of. */
    static int discs(Body body) {
        if (body instanceof DiscSet set) {
            return set.discs().size();
        }
        return body instanceof Stadium ? 2 : 1;
    }
}
