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
import org.ferrule.geometry.search.PackingSearch;
import org.ferrule.geometry.search.Shape;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * The smallest circle round four or more free discs, none of them a mere point. No closed form is known; a search finds
 * where they lie, a {@link Certificate} proves that they fit, and a {@link DiscsBound} what they need at least.
 */
final class ManyDiscs {
    /** Descents by number of discs, so many that they rarely miss the best arrangement. */
    private static final int[] DESCENTS = { 0, 0, 0, 0, 60, 150, 300, 1000, 1200, 1500, 1800, 2000, 2000,
        2000, 2000, 2000, 2000 };
    /** Enough to find room where there is plenty. */
    private static final int FEW_DESCENTS = 12;
    private static final double UNITS = 2.0 * LengthUnit.MILLIMETRE.thirdNanometres();

    private final List<Length> falling;
    private final DiscsBound bound;

    ManyDiscs(List<Length> falling) {
        this.falling = falling;
        bound = new DiscsBound(falling, Length.ZERO);
    }

    Enclosure enclosure() {
        return oneInEachHollow().orElseGet(this::searched);
    }

    /** Looks, not for long, for room in a circle. */
    Room room(Length diameter) {
        return oneInEachHollow().map(known -> Room.of(known, diameter)).orElseGet(() -> searched(diameter));
    }

    /** Returns what is proved to be needed at least. */
    Length lower() {
        return oneInEachHollow().map(Enclosure::lowerDiameter)
                .orElseGet(() -> bound.lower(falling.stream().reduce(Length.ZERO, Length::plus)));
    }

    private Room searched(Length diameter) {
        if (bound.excludes(diameter)) {
            return Room.NONE;
        }
        double radiusMm = diameter.mm() / 2;
        Arrangement found = PackingSearch.search(shapes(), FEW_DESCENTS, radius -> radius <= radiusMm);
        return Certificate.of(outlines(found)).filter(c -> c.diameter().compareTo(diameter) <= 0).isPresent()
                ? Room.FOUND : Room.OPEN;
    }

    private List<Shape> shapes() {
        return falling.stream().map(diameter -> Shape.disc(diameter.mm() / 2)).toList();
    }

    /** Two large discs across the circle leave two equal hollows; a disc that fits into one shares it with none. */
    private Optional<Enclosure> oneInEachHollow() {
        Enclosure third = EnclosingCircle.discs(falling.subList(0, 3));
        Length sum = falling.get(0).plus(falling.get(1));
        if (falling.size() > 4 || !third.upperDiameter().equals(sum)) {
            return Optional.empty();
        }
        Enclosure fourth = EnclosingCircle.discs(falling.get(0), falling.get(1), falling.get(3));
        PlacedDisc last = fourth.discs().get(2);
        List<PlacedDisc> discs = new ArrayList<>(third.discs());
        discs.add(new PlacedDisc(last.xMm(), -last.yMm(), last.diameter()));
        return Optional.of(new Enclosure(sum, sum, discs));
    }

    private Enclosure searched() {
        int descents = DESCENTS[falling.size()];
        Arrangement found = PackingSearch.search(shapes(), descents, this::isLeast);
        Certificate certificate = Certificate.of(outlines(found)).orElseThrow();
        Length upper = certificate.diameter();
        Length sum = falling.get(0).plus(falling.get(1));
        if (upper.minus(sum).compareTo(DiscsBound.ROUNDING) <= 0) {
            return new PairInFull(falling).enclosure(found, descents)
                    .orElseGet(() -> new Enclosure(sum, upper, certificate.discs()));
        }
        return new Enclosure(bound.lower(upper), upper, certificate.discs());
    }

    private boolean isLeast(double radiusMm) {
        return bound.isLeast(new Length((long) Math.ceil(radiusMm * UNITS)));
    }

    private List<Outline> outlines(Arrangement found) {
        return IntStream.range(0, falling.size())
                .mapToObj(i -> Outline.of(falling.subList(i, i + 1), found.discs().subList(i, i + 1), false)).toList();
    }
}
