/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;

/**
 * The smallest circle round bodies that are free to move and to turn and do not overlap: the least lumen for shafts,
 * oval shafts, push rods and wires that lie side by side. Discs alone, and one rigid body with at most one disc, have
 * answers of their own ({@link EnclosingCircle}, {@link Body#with(Length)}). For all else a search finds a circle that
 * is proved to be large enough; a simple lower bound is proved, too.
 */
public final class Packing {
    private static final int MOST_BODIES = EnclosingCircle.MOST_DISCS;

    private final List<Piece> pieces;
    private final int[] order;

    private Packing(List<? extends Body> bodies) {
        if (bodies.size() > MOST_BODIES) {
            throw new IllegalArgumentException(bodies.size() + " bodies, at most " + MOST_BODIES);
        }
        pieces = bodies.stream().map(Piece::of).toList();
        order = IntStream.range(0, bodies.size()).boxed().sorted(Comparator.comparing(pieces::get, Piece.ORDER))
                .mapToInt(i -> i).toArray();
    }

    /**
     * Returns a small circle round up to sixteen bodies. The result's discs are all discs of all bodies, in the order
     * of the bodies; of a stadium its two ends. The same bodies always get the same answer.
     *
     * @throws IllegalArgumentException if there are more than sixteen bodies, for which the search would take long
     */
    public static Enclosure of(List<? extends Body> bodies) {
        return new Packing(bodies).enclosure(Optional.empty());
    }

    /**
     * Does the same, with bodies that also try the places that they have in another answer, such as that for larger
     * bodies: the result is not larger than those places allow.
     *
     * @param warm an answer for as many bodies with as many discs, in the same order
     * @throws IllegalArgumentException as above, and if the answer has another number of discs
     */
    public static Enclosure of(List<? extends Body> bodies, Enclosure warm) {
        return new Packing(bodies).enclosure(Optional.of(warm));
    }

    /**
     * Tells whether a circle has room for bodies, in much less time than it takes to find the smallest one. Room that is
     * found is room for {@link #of(List)}, too, but for rounding.
     *
     * @throws IllegalArgumentException if there are more than sixteen bodies
     */
    public static Room room(List<? extends Body> bodies, Length diameter) {
        return PieceSearch.room(new Packing(bodies).sorted(), diameter);
    }

    /**
     * Returns the lower bound of {@link #of(List)}, without the search for places.
     *
     * @throws IllegalArgumentException if there are more than sixteen bodies
     */
    public static Length lowerDiameter(List<? extends Body> bodies) {
        return PieceSearch.lower(new Packing(bodies).sorted());
    }

    private List<Piece> sorted() {
        return IntStream.of(order).mapToObj(pieces::get).toList();
    }

    private Enclosure enclosure(Optional<Enclosure> warm) {
        List<Piece> sorted = sorted();
        Enclosure found = PieceSearch.enclose(sorted);
        if (warm.isPresent()) {
            found = better(found, new WarmStart(sorted, sort(warm.get().discs())).enclosures());
        }
        return new Enclosure(found.lowerDiameter(), found.upperDiameter(), restore(found.discs()));
    }

    private static Enclosure better(Enclosure found, List<Enclosure> others) {
        Length lower = found.lowerDiameter();
        return others.stream().reduce(found, (best, other) -> other.upperDiameter()
                .compareTo(best.upperDiameter()) < 0
                        ? new Enclosure(lower, other.upperDiameter().max(lower), other.discs()) : best);
    }

    /** Cuts the discs of all bodies up, and returns what is to be placed in the order of the search. */
    private List<List<PlacedDisc>> sort(List<PlacedDisc> discs) {
        int needed = pieces.stream().mapToInt(piece -> piece.own().size()).sum();
        if (discs.size() != needed) {
            throw new IllegalArgumentException("places of " + discs.size() + " discs for " + needed);
        }
        List<List<PlacedDisc>> cut = new ArrayList<>();
        int from = 0;
        for (Piece piece : pieces) {
            int to = from + piece.own().size();
            cut.add(piece.placed(discs.subList(from, to)));
            from = to;
        }
        return IntStream.of(order).mapToObj(cut::get).toList();
    }

    private List<PlacedDisc> restore(List<PlacedDisc> placed) {
        List<List<PlacedDisc>> whole = new ArrayList<>(java.util.Collections.nCopies(order.length, List.of()));
        int from = 0;
        for (int i : order) {
            int to = from + pieces.get(i).diameters().size();
            whole.set(i, pieces.get(i).whole(placed.subList(from, to)));
            from = to;
        }
        return whole.stream().flatMap(List::stream).toList();
    }
}
