/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.Comparator;
import java.util.List;
import org.ferrule.quantity.Length;

/**
 * What is proved of the smallest circle round pieces: no less than one of them needs alone or with the largest disc, and
 * no less than the discs that lie in them would need if they were free.
 */
final class PiecesBound {
    private final DiscsBound bound;

    /** Prepares the bounds of two or more pieces, none of them a point. */
    PiecesBound(List<Piece> pieces) {
        List<Length> within = pieces.stream().flatMap(piece -> piece.within().stream())
                .sorted(Comparator.reverseOrder()).toList();
        bound = new DiscsBound(within, rigid(pieces));
    }

    private static Length rigid(List<Piece> pieces) {
        Length disc = pieces.stream().filter(Piece::isRound).map(Piece::width).reduce(Length.ZERO, Length::max);
        return pieces.stream().filter(piece -> !piece.isRound()).map(piece -> piece.body().with(disc).lowerDiameter())
                .reduce(Length.ZERO, Length::max);
    }

    /** Tells whether a circle that was found is the smallest one, but for rounding. */
    boolean isLeast(Length found) {
        return bound.isLeast(found);
    }

    /** Tells whether it is proved that no circle of that diameter holds the pieces. */
    boolean excludes(Length diameter) {
        return bound.excludes(diameter);
    }

    /** Returns a diameter below which no circle encloses the pieces, given one that does. */
    Length lower(Length upper) {
        return bound.lower(upper);
    }
}
