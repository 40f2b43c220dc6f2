/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.Optional;
import java.util.function.Function;

import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;

/**
 * The diameter of the smallest lumen that takes an outline, with a wire beside it or not.
 *
 * @param needed the diameter, lane by lane
 * @param proved whether it is the smallest one, and not only one that is large enough
 */
record Room(Figure needed, boolean proved) {
    private static final Length LEFT_OPEN = new Length(6);

    /**
     * Computes the room for an outline.
     *
     * @param outline the outline
     * @param wire the wire beside it, if one lies there
     */
    static Room of(Profile outline, Optional<Figure> wire) {
        if (outline.isRound()) {
            return round(outline.figures().get(0), wire);
        }
        Enclosure low = enclosure(outline, wire, Figure::low);
        Enclosure centre = enclosure(outline, wire, Figure::centre);
        Enclosure high = enclosure(outline, wire, Figure::high);
        boolean assumed = outline.centreAssumed() || wire.filter(Figure::centreAssumed).isPresent();
        // Where growing parts hide behind others the bounds of two lanes may differ by rounding alone.
        Length most = high.upperDiameter().max(centre.upperDiameter());
        Figure needed = new Figure(low.lowerDiameter(), centre.upperDiameter(), most, assumed);
        return new Room(needed, isExact(centre) && isExact(low));
    }

    private static Room round(Figure shaft, Optional<Figure> wire) {
        return new Room(wire.map(w -> new Figure(shaft.low().plus(w.low()), shaft.centre().plus(w.centre()),
                shaft.high().plus(w.high()), shaft.centreAssumed() || w.centreAssumed())).orElse(shaft), true);
    }

    /** Bounds that differ by no more than their rounding, and the nanometre at which a search ends, are exact. */
    private static boolean isExact(Enclosure enclosure) {
        return enclosure.gap().compareTo(LEFT_OPEN) <= 0;
    }

    private static Enclosure enclosure(Profile outline, Optional<Figure> wire, Function<Figure, Length> lane) {
        Optional<Length> beside = wire.map(lane);
        Body body = outline.body(lane);
        if (body instanceof Stadium stadium) {
            return beside.map(stadium::with).orElseGet(stadium::enclosure);
        }
        DiscSet set = (DiscSet) body;
        return beside.map(set::with).orElseGet(set::enclosure);
    }
}
