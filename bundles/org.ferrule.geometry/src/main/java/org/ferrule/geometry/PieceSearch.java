/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ferrule.geometry.search.Arrangement;
import org.ferrule.geometry.search.Arrangement.Centre;
import org.ferrule.geometry.search.PackingSearch;
import org.ferrule.geometry.search.Shape;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Finds a small circle round pieces, in the order of {@link Piece#ORDER}. */
final class PieceSearch {
    /** Descents by number of pieces. */
    private static final int[] DESCENTS = { 0, 0, 60, 150, 250, 350, 450, 600, 800 };
    private static final double UNITS = 2.0 * LengthUnit.MILLIMETRE.thirdNanometres();

    private final List<Piece> pieces;
    private final PiecesBound bound;

    private PieceSearch(List<Piece> pieces) {
        this.pieces = pieces;
        bound = new PiecesBound(pieces);
    }

    /** Returns the circle, with the discs of each piece that are to be placed. */
    static Enclosure enclose(List<Piece> pieces) {
        long rigid = pieces.stream().filter(piece -> !piece.isRound()).count();
        int last = pieces.size() - 1;
        if (rigid == 0) {
            return EnclosingCircle.discs(pieces.stream().map(Piece::width).toList());
        }
        if (pieces.size() == 1) {
            return pieces.get(0).body().enclosure();
        }
        if (pieces.get(last).width().equals(Length.ZERO)) {
            return PointAtRim.add(enclose(pieces.subList(0, last)));
        }
        return pieces.size() == 2 && rigid == 1 ? withDisc(pieces.get(0), pieces.get(1).width())
                : new PieceSearch(pieces).enclosure();
    }

    private static Enclosure withDisc(Piece rigid, Length disc) {
        Enclosure answer = rigid.body().with(disc);
        int last = answer.discs().size() - 1;
        return Certificate.strengthen(answer, List.of(new Outline(answer.discs().subList(0, last), rigid.isBar()),
                new Outline(answer.discs().subList(last, last + 1), false)));
    }

    private Enclosure enclosure() {
        int descents = DESCENTS[Math.min(pieces.size(), DESCENTS.length - 1)];
        List<Shape> shapes = shapes(pieces);
        Certificate certificate = certificate(pieces, PackingSearch.search(shapes, descents, this::isLeast))
                .orElseGet(() -> certificate(pieces, Arrangement.pile(shapes)).orElseThrow());
        Length upper = certificate.diameter();
        return new Enclosure(bound.lower(upper), upper, certificate.discs());
    }

    private boolean isLeast(double radiusMm) {
        return bound.isLeast(new Length((long) Math.ceil(radiusMm * UNITS)));
    }

    static List<Shape> shapes(List<Piece> pieces) {
        return pieces.stream().map(Piece::shape).toList();
    }

    static Optional<Certificate> certificate(List<Piece> pieces, Arrangement arrangement) {
        List<Outline> outlines = new ArrayList<>();
        int from = 0;
        for (Piece piece : pieces) {
            int to = from + piece.diameters().size();
            outlines.add(Outline.of(piece.diameters(), arrangement.discs().subList(from, to), piece.isBar()));
            from = to;
        }
        return Certificate.of(outlines);
    }
}
