/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.ferrule.geometry.search.Shape;
import org.ferrule.quantity.Length;

/**
 * A body as the search and the bounds take it. A body whose outline is a disc counts as that one disc.
 *
 * @param body the body
 * @param own its discs as they lie in the smallest circle round it
 * @param width the diameter of that circle, rounded down
 */
record Piece(Body body, List<PlacedDisc> own, Length width) {
    /** Rigid bodies first, then discs, each by falling size, so that the order of the bodies does not matter. */
    static final Comparator<Piece> ORDER = Comparator.comparing(Piece::isRound)
            .thenComparing(Piece::width, Comparator.reverseOrder()).thenComparing(piece -> piece.own.size())
            .thenComparing(piece -> piece.own.stream().map(PlacedDisc::diameter).reduce(Length.ZERO, Length::plus));

    static Piece of(Body body) {
        Enclosure alone = body.enclosure();
        return new Piece(body, alone.discs(), alone.lowerDiameter());
    }

    /** Tells whether the outline is a single disc. */
    boolean isRound() {
        return own.stream().anyMatch(disc -> disc.diameter().equals(width));
    }

    /** Returns the diameters of the discs that are to be placed. */
    List<Length> diameters() {
        return isRound() ? List.of(width) : own.stream().map(PlacedDisc::diameter).toList();
    }

    /** Returns the outline in millimetres. */
    Shape shape() {
        if (isRound()) {
            return Shape.disc(width.mm() / 2);
        }
        return new Shape(own.stream().mapToDouble(PlacedDisc::xMm).toArray(),
                own.stream().mapToDouble(PlacedDisc::yMm).toArray(),
                own.stream().mapToDouble(disc -> disc.diameter().mm() / 2).toArray(), isBar());
    }

    boolean isBar() {
        return body instanceof Stadium && !isRound();
    }

    /** Returns discs that lie in the body and do not overlap. */
    List<Length> within() {
        if (isRound()) {
            return List.of(width);
        }
        if (body instanceof Stadium stadium) {
            long side = stadium.width().thirdNanometres() / stadium.height().thirdNanometres();
            return Collections.nCopies((int) Math.min(side, EnclosingCircle.MOST_DISCS), stadium.height());
        }
        return ((DiscSet) body).apart();
    }

    /** Returns the discs of the body, given those that were placed. */
    List<PlacedDisc> whole(List<PlacedDisc> placed) {
        if (!isRound()) {
            return placed;
        }
        PlacedDisc outer = own.stream().filter(disc -> disc.diameter().equals(width)).findFirst().orElseThrow();
        double dx = placed.get(0).xMm() - outer.xMm();
        double dy = placed.get(0).yMm() - outer.yMm();
        return own.stream().map(d -> new PlacedDisc(d.xMm() + dx, d.yMm() + dy, d.diameter())).toList();
    }

    /** Returns those of the body's discs that are to be placed: the reverse of {@link #whole(List)}. */
    List<PlacedDisc> placed(List<PlacedDisc> whole) {
        if (!isRound()) {
            return whole;
        }
        int outer = own.stream().map(PlacedDisc::diameter).toList().indexOf(width);
        return whole.subList(outer, outer + 1);
    }
}
