/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import org.ferrule.fit.figure.Figure;
import org.ferrule.geometry.Body;
import org.ferrule.geometry.Enclosure;
import org.ferrule.quantity.Length;

/**
 * The diameter of the smallest lumen that takes several parts side by side.
 *
 * @param figure the diameter, lane by lane; no lane is too small
 * @param proved whether the centre is the smallest one, and not only one that is large enough
 */
record Need(Figure figure, boolean proved) {
    private static final Length LEFT_OPEN = new Length(6);

    /**
     * What parts need together.
     *
     * @param wide the parts as large as they are
     * @param narrow the parts as small as they are: the same ones, but where a taper is taken as a whole
     */
    static Need of(List<Profile> wide, List<Profile> narrow, Packings packings) {
        Enclosure centre = enclosure(wide, Figure::centre, packings);
        Length high = enclosure(wide, Figure::high, packings).upperDiameter().max(centre.upperDiameter());
        Length low = packings.lowerDiameter(bodies(narrow, Figure::low)).min(centre.upperDiameter());
        boolean assumed = wide.stream().anyMatch(Profile::centreAssumed);
        boolean proved = wide.equals(narrow) && centre.gap().compareTo(LEFT_OPEN) <= 0;
        return new Need(new Figure(low, centre.upperDiameter(), high, assumed), proved);
    }

    /** The upper end of what parts need together. */
    static Length high(List<Profile> parts, Packings packings) {
        return enclosure(parts, Figure::high, packings).upperDiameter();
    }

    /** Whether the upper end of what parts need together may be more than a lumen. */
    static boolean mayExceed(List<Profile> parts, Length lumen, Packings packings) {
        return packings.mayExceed(bodies(parts, Figure::high), lumen);
    }

    /**
     * Whether parts surely overlap in a lumen: each counts with its centre, or, where that is only assumed, with its
     * lower end.
     */
    static boolean overlap(List<Profile> parts, Length lumen, Packings packings) {
        return packings.exceed(bodies(parts, Need::deciding), lumen);
    }

    /** Whether parts may overlap like that. */
    static boolean mayOverlap(List<Profile> parts, Length lumen, Packings packings) {
        return packings.mayExceed(bodies(parts, Need::deciding), lumen);
    }

    private static Length deciding(Figure figure) {
        return figure.centreAssumed() ? figure.low() : figure.centre();
    }

    private static Enclosure enclosure(List<Profile> parts, Function<Figure, Length> lane, Packings packings) {
        return packings.around(bodies(parts, lane));
    }

    private static List<Body> bodies(List<Profile> parts, Function<Figure, Length> lane) {
        List<Body> bodies = new ArrayList<>(parts.size());
        parts.forEach(part -> bodies.add(part.body(lane)));
        return bodies;
    }
}
