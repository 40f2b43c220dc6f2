/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Length;

/** Finds where two outer curves cross: at a step, or inside a taper. Stretches of unknown diameter end the search. */
public final class Crossings {
    private final Curve first;
    private final Curve second;
    private final List<Crossing> found = new ArrayList<>();
    /** The last place at which the two differed; absent at the start and behind unknown stretches. */
    private Optional<Crossing.Pair> before = Optional.empty();

    private Crossings(Curve first, Curve second) {
        this.first = first;
        this.second = second;
    }

    /** The crossings of two curves, from distal to proximal. */
    public static List<Crossing> of(Curve first, Curve second) {
        Crossings crossings = new Crossings(first, second);
        TreeSet<Length> borders = new TreeSet<>();
        Stream.concat(first.pieces().stream(), second.pieces().stream())
                .forEach(piece -> borders.addAll(List.of(piece.from(), piece.to())));
        List<Length> ends = List.copyOf(borders);
        for (int i = 1; i < ends.size(); i++) {
            crossings.look(ends.get(i - 1), ends.get(i));
        }
        return List.copyOf(crossings.found);
    }

    private void look(Length from, Length to) {
        Optional<Crossing.Pair> start = pair(from, from, to);
        Optional<Crossing.Pair> end = pair(to, from, to);
        if (start.isEmpty() || end.isEmpty()) {
            before = Optional.empty();
            return;
        }
        meet(start.get(), from);
        if (start.get().order() * end.get().order() < 0) {
            Length station = meeting(start.get(), end.get(), from, to);
            before = end;
            found.add(new Crossing(station, end.get().order() > 0 ? 0 : 1, start.get(), end.get()));
        } else {
            meet(end.get(), start.get().order() == 0 ? from : to);
        }
    }

    /** Takes note of a place; a change of order since the last one is a crossing at the station. */
    private void meet(Crossing.Pair here, Length station) {
        if (here.order() == 0) {
            return;
        }
        before.filter(pair -> pair.order() * here.order() < 0)
                .ifPresent(pair -> found.add(new Crossing(station, here.order() > 0 ? 0 : 1, pair, here)));
        before = Optional.of(here);
    }

    private Optional<Crossing.Pair> pair(Length station, Length from, Length to) {
        Optional<Figure> one = first.inside(station, from, to);
        Optional<Figure> other = second.inside(station, from, to);
        return one.flatMap(a -> other.map(b -> new Crossing.Pair(a, b)));
    }

    /** Where two straight lines meet. */
    private static Length meeting(Crossing.Pair start, Crossing.Pair end, Length from, Length to) {
        BigDecimal a = difference(start).abs();
        BigDecimal b = difference(end).abs();
        BigDecimal way = BigDecimal.valueOf(to.minus(from).thirdNanometres());
        BigDecimal part = way.multiply(a).divide(a.add(b), 0, RoundingMode.HALF_EVEN);
        return from.plus(new Length(part.longValueExact()));
    }

    private static BigDecimal difference(Crossing.Pair pair) {
        return BigDecimal.valueOf(pair.first().centre().minus(pair.second().centre()).thirdNanometres());
    }
}
