/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;

/** Bodies that lie in a circle about the origin and, rounding included, do not overlap. */
final class Certificate {
    private static final double FIRST_SPREAD = 1e-12;
    private static final double LAST_SPREAD = 1e-3;

    private final List<Outline> bodies;

    private Certificate(List<Outline> bodies) {
        this.bodies = bodies;
    }

    /**
     * Checks that bodies do not overlap. Where rounding alone makes them overlap they are moved apart by a hair.
     *
     * @return empty if a hair is not enough
     */
    static Optional<Certificate> of(List<Outline> bodies) {
        return Stream.concat(Stream.of(0.0), Stream.iterate(FIRST_SPREAD, s -> s < LAST_SPREAD, s -> s * 10))
                .map(spread -> bodies.stream().map(body -> body.moved(spread)).toList())
                .filter(Certificate::areClear).findFirst().map(Certificate::new);
    }

    /**
     * Returns a closed form's answer for discs with places that hold in exact arithmetic, if the rounding of its
     * diameter leaves room for them; else with its own places, which are right but for the last digit of a double.
     */
    static Enclosure strengthen(Enclosure answer) {
        return strengthen(answer, answer.discs().stream().map(disc -> new Outline(List.of(disc), false)).toList());
    }

    /** Does the same for an answer for other bodies, given as they lie. */
    static Enclosure strengthen(Enclosure answer, List<Outline> bodies) {
        return of(bodies).filter(certificate -> certificate.diameter().compareTo(answer.upperDiameter()) <= 0)
                .map(c -> new Enclosure(answer.lowerDiameter(), answer.upperDiameter(), c.discs())).orElse(answer);
    }

    private static boolean areClear(List<Outline> bodies) {
        return IntStream.range(0, bodies.size())
                .allMatch(i -> bodies.subList(0, i).stream().allMatch(other -> other.isClearOf(bodies.get(i))));
    }

    /** Returns the diameter of a circle about the origin that holds the bodies; rounded up. */
    Length diameter() {
        return bodies.stream().map(Outline::around).reduce(Length.ZERO, Length::max);
    }

    /** Returns the discs of all bodies. */
    List<PlacedDisc> discs() {
        return bodies.stream().flatMap(body -> body.discs().stream()).toList();
    }
}
