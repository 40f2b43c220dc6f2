/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.figure.Figure;
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
    private static final Length LEAST = new Length(1);

    /**
     * Computes the room for an outline.
     *
     * @param contour the outline
     * @param figures its dimensions, in the contour's order
     * @param wire the wire beside it, if one lies there
     */
    static Room of(Contour contour, List<Figure> figures, Optional<Figure> wire) {
        if (contour instanceof Contour.Round) {
            return round(figures.get(0), wire);
        }
        Enclosure low = enclosure(contour, figures, wire, Figure::low);
        Enclosure centre = enclosure(contour, figures, wire, Figure::centre);
        Enclosure high = enclosure(contour, figures, wire, Figure::high);
        boolean assumed = figures.stream().anyMatch(Figure::centreAssumed)
                || wire.filter(Figure::centreAssumed).isPresent();
        // Where growing parts hide behind others the bounds of two lanes may differ by rounding alone.
        Length most = high.upperDiameter().max(centre.upperDiameter());
        Figure needed = new Figure(low.lowerDiameter(), centre.upperDiameter(), most, assumed);
        return new Room(needed, isExact(centre) && isExact(low));
    }

    /** An oval that is almost round may have its larger measure across in one lane and its other one in another. */
    private static Stadium stadium(Length a, Length b) {
        return new Stadium(a.max(b).max(LEAST), a.min(b).max(LEAST));
    }

    private static DiscSet discs(Contour.Bundle bundle, List<Figure> figures, Function<Figure, Length> lane) {
        List<DiscSet.Disc> discs = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            Contour.Member member = bundle.members().get(i);
            discs.add(new DiscSet.Disc(member.x(), member.y(), lane.apply(figures.get(i))));
        }
        return new DiscSet(discs);
    }

    private static Room round(Figure shaft, Optional<Figure> wire) {
        return new Room(wire.map(w -> new Figure(shaft.low().plus(w.low()), shaft.centre().plus(w.centre()),
                shaft.high().plus(w.high()), shaft.centreAssumed() || w.centreAssumed())).orElse(shaft), true);
    }

    /** Bounds that differ by no more than their rounding, and the nanometre at which a search ends, are exact. */
    private static boolean isExact(Enclosure enclosure) {
        return enclosure.gap().compareTo(LEFT_OPEN) <= 0;
    }

    private static Enclosure enclosure(Contour contour, List<Figure> figures, Optional<Figure> wire,
            Function<Figure, Length> lane) {
        Optional<Length> beside = wire.map(lane);
        if (contour instanceof Contour.Oval) {
            Stadium stadium = stadium(lane.apply(figures.get(0)), lane.apply(figures.get(1)));
            return beside.map(stadium::with).orElseGet(stadium::enclosure);
        }
        DiscSet set = discs((Contour.Bundle) contour, figures, lane);
        return beside.map(set::with).orElseGet(set::enclosure);
    }
}
