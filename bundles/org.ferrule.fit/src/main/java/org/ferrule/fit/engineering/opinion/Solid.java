/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import java.util.List;
import java.util.stream.Stream;

/**
 * A piece of a device that takes room beside others, in stations from its tip.
 *
 * @param whole the diameter of the circle round all of it
 * @param around discs that together take at least the room that it takes
 * @param within discs that together take at most the room that it takes; the same where it is round
 */
record Solid(Piece whole, List<Piece> around, List<Piece> within) {
    Solid {
        around = List.copyOf(around);
        within = List.copyOf(within);
    }

    long from() {
        return whole.from();
    }

    long to() {
        return whole.to();
    }

    /** The part of it between two stations. */
    Solid between(long nearer, long farther) {
        return new Solid(cut(whole, nearer, farther), around.stream().map(p -> cut(p, nearer, farther)).toList(),
                within.stream().map(p -> cut(p, nearer, farther)).toList());
    }

    private static Piece cut(Piece piece, long nearer, long farther) {
        return piece.upTo(farther).from(nearer);
    }

    /** Whether it is as thick at one end as at the other. */
    boolean isStraight() {
        return Stream.concat(around.stream(), within.stream()).allMatch(Piece::isStraight);
    }
}
