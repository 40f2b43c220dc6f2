/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.ferrule.geometry.search.Arrangement;
import org.ferrule.geometry.search.Arrangement.Centre;
import org.ferrule.geometry.search.PackingSearch;
import org.ferrule.quantity.LengthUnit;

/** The places that pieces have in another answer, as they are and moved together from there. */
final class WarmStart {
    private static final double UNITS = 2.0 * LengthUnit.MILLIMETRE.thirdNanometres();

    private final List<Piece> pieces;
    private final Arrangement start;

    WarmStart(List<Piece> pieces, List<List<PlacedDisc>> places) {
        this.pieces = pieces;
        List<Centre> centres = places.stream().flatMap(List::stream).map(d -> new Centre(d.xMm(), d.yMm())).toList();
        start = new Arrangement(centres, 0).fitted(PieceSearch.shapes(pieces));
    }

    /** Returns the circles that these places lead to; none where pieces overlap in them. */
    List<Enclosure> enclosures() {
        List<Arrangement> found = new ArrayList<>(List.of(start));
        if (pieces.size() > 1) {
            PackingSearch.settle(PieceSearch.shapes(pieces), start).ifPresent(found::add);
        }
        return found.stream().map(this::centred).flatMap(arrangement -> enclosures(arrangement)).toList();
    }

    private Stream<Enclosure> enclosures(Arrangement arrangement) {
        return PieceSearch.certificate(pieces, arrangement).stream()
                .map(certificate -> new Enclosure(certificate.diameter(), certificate.diameter(), certificate.discs()));
    }

    /** Moves the centre of the smallest circle round the discs to the origin. */
    private Arrangement centred(Arrangement arrangement) {
        List<Centre> centres = arrangement.discs();
        List<Double> radii = pieces.stream().flatMap(piece -> piece.diameters().stream())
                .map(diameter -> (double) diameter.thirdNanometres()).toList();
        FixedDiscs discs = new FixedDiscs(radii.size());
        for (int i = 0; i < radii.size(); i++) {
            discs.set(i, centres.get(i).x() * UNITS, centres.get(i).y() * UNITS, radii.get(i));
        }
        Rim rim = RimSearch.search(discs).best();
        return new Arrangement(centres.stream()
                .map(c -> new Centre(c.x() - rim.x() / UNITS, c.y() - rim.y() / UNITS)).toList(), 0);
    }
}
