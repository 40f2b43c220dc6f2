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

/**
 * Discs that all hide beside the two largest, which lie across the circle: its diameter is their sum exactly. The two
 * are placed as exactly as doubles can tell; all others must have room to spare, which is more than doubles round.
 */
final class PairInFull {
    /** What the others are made thicker by, to get room to spare; part of the largest disc. */
    private static final double ROOM = 1e-8;

    private final List<Length> falling;
    private final List<Shape> thick;
    private final Length sum;

    /**
     * Prepares the proof.
     *
     * @param falling the discs
     */
    PairInFull(List<Length> falling) {
        this.falling = falling;
        double room = falling.get(0).mm() * ROOM;
        thick = IntStream.range(0, falling.size())
                .mapToObj(i -> Shape.disc(falling.get(i).mm() / 2 + (i < 2 ? 0 : room))).toList();
        sum = falling.get(0).plus(falling.get(1));
    }

    /**
     * Returns the exact answer, or empty if some disc has hardly any room.
     *
     * @param rough where the discs lie in a circle hardly larger than the sum; they may be wedged there, and then other
     *        places are searched
     * @param mostDescents when to end that search
     */
    Optional<Enclosure> enclosure(Arrangement rough, int mostDescents) {
        double hardlyMore = sum.mm() / 2 * (1 + ROOM / 10);
        return inFull(rough).or(() -> inFull(PackingSearch.search(thick, mostDescents, r -> r <= hardlyMore)));
    }

    private Optional<Enclosure> inFull(Arrangement rough) {
        return PackingSearch.fill(thick, new Arrangement(turned(rough), sum.mm() / 2), 2).map(this::placed)
                .filter(placed -> hasRoom(placed, sum)).map(placed -> new Enclosure(sum, sum, placed));
    }

    /** Turns the line through both large discs to the x axis and puts them where they belong. */
    private List<Centre> turned(Arrangement rough) {
        List<Centre> centres = new ArrayList<>();
        EnclosingCircle.discs(falling.subList(0, 2)).discs().forEach(d -> centres.add(new Centre(d.xMm(), d.yMm())));
        double x = rough.discs().get(1).x() - rough.discs().get(0).x();
        double y = rough.discs().get(1).y() - rough.discs().get(0).y();
        double length = StrictMath.hypot(x, y);
        rough.discs().stream().skip(2).map(centre -> new Centre((centre.x() * x + centre.y() * y) / length,
                (centre.y() * x - centre.x() * y) / length)).forEach(centres::add);
        return centres;
    }

    private List<PlacedDisc> placed(Arrangement filled) {
        List<PlacedDisc> placed = new ArrayList<>(EnclosingCircle.discs(falling.subList(0, 2)).discs());
        for (int i = 2; i < falling.size(); i++) {
            Centre centre = filled.discs().get(i);
            placed.add(new PlacedDisc(centre.x(), centre.y(), falling.get(i)));
        }
        return placed;
    }

    private static boolean hasRoom(List<PlacedDisc> placed, Length diameter) {
        List<Outline> outlines = placed.stream().map(disc -> new Outline(List.of(disc), false)).toList();
        return IntStream.range(2, placed.size()).allMatch(i -> outlines.get(i).around().compareTo(diameter) <= 0
                && outlines.subList(0, i).stream().allMatch(other -> other.isClearOf(outlines.get(i))));
    }
}
