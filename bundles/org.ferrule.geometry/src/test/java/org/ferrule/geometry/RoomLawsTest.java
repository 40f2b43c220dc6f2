/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.List;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.quicktheories.core.Gen;

/** A quick look for room says nothing else than the smallest circle does. */
class RoomLawsTest {
    private static final int EXAMPLES = 40;
    /** What rounding may make of a circle that is found twice: a picometre or so, in thirds of a nanometre. */
    private static final Length ROUNDING = new Length(6);
    private static final Gen<Stadium> OVALS = longs().between(600_000L, 3_000_000L).zip(longs().between(0, 4_000_000L),
            (height, more) -> new Stadium(new Length(height + more), new Length(height)));
    private static final Gen<List<Stadium>> UP_TO_TWO = lists().of(OVALS).ofSizeBetween(0, 2);
    private static final Gen<List<Length>> DISCS = lists().of(Discs.TRADE).ofSizeBetween(1, 4);
    private static final Gen<Long> PER_MILLE = longs().between(500, 1500);

    private static List<Body> bodies(List<Stadium> ovals, List<Length> discs) {
        return Stream.concat(ovals.stream(), discs.stream().map(FreeDisc::new)).map(Body.class::cast).toList();
    }

    @Test
    void agreesWithTheSmallestCircle() {
        laws().withExamples(EXAMPLES).forAll(UP_TO_TWO, DISCS, PER_MILLE).checkAssert((ovals, discs, share) -> {
            List<Body> bodies = bodies(ovals, discs);
            Enclosure least = Packing.of(bodies);
            Length asked = new Length(least.upperDiameter().thirdNanometres() / 1000 * share);
            switch (Packing.room(bodies, asked)) {
                case FOUND -> assertTrue(least.upperDiameter().compareTo(asked.plus(ROUNDING)) <= 0);
                case NONE -> assertTrue(least.lowerDiameter().compareTo(asked.minus(ROUNDING)) > 0);
                case OPEN -> assertTrue(least.lowerDiameter().compareTo(asked.plus(ROUNDING)) <= 0);
            }
        });
    }

    @Test
    void isFoundWhereThereIsPlenty() {
        laws().withExamples(EXAMPLES).forAll(UP_TO_TWO, DISCS).checkAssert((ovals, discs) -> {
            List<Body> bodies = bodies(ovals, discs);
            Length plenty = Packing.of(bodies).upperDiameter();
            assertEquals(Room.FOUND, Packing.room(bodies, plenty.plus(plenty.dividedBy(2))));
        });
    }

    @Test
    void isNoneBelowTheLowerBound() {
        laws().withExamples(EXAMPLES).forAll(UP_TO_TWO, DISCS).checkAssert((ovals, discs) -> {
            List<Body> bodies = bodies(ovals, discs);
            Length proved = Packing.of(bodies).lowerDiameter();
            assertNotEquals(Room.FOUND, Packing.room(bodies, proved.minus(ROUNDING)));
            assertEquals(Room.NONE, Packing.room(bodies, proved.dividedBy(2)));
        });
    }

    @Test
    void lowerBoundNeedsNoSearch() {
        laws().withExamples(EXAMPLES).forAll(UP_TO_TWO, DISCS).checkAssert((ovals, discs) -> {
            List<Body> bodies = bodies(ovals, discs);
            Length searched = Packing.of(bodies).lowerDiameter();
            Length asked = Packing.lowerDiameter(bodies);
            assertTrue(asked.minus(searched).compareTo(ROUNDING) <= 0 && searched.minus(asked).compareTo(ROUNDING) <= 0,
                    () -> asked + " and " + searched);
        });
    }

    // Radii 1, 2 and 3: a circle of radius 5, in which the smallest lies free.
    @Test
    void threeDiscsHaveAnExactAnswer() {
        List<FreeDisc> discs = Stream.of("2", "4", "6").map(d -> new FreeDisc(mm(d))).toList();
        Length needed = Packing.of(discs).upperDiameter();
        assertEquals(Room.FOUND, Packing.room(discs, needed));
        assertEquals(Room.NONE, Packing.room(discs, needed.minus(new Length(2))));
    }
}
