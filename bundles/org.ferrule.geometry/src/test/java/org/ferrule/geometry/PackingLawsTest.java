/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.quicktheories.core.Gen;

/** What holds for bodies side by side, whatever they are. */
class PackingLawsTest {
    private static final int EXAMPLES = 25;
    private static final Gen<Stadium> OVALS = longs().between(600_000L, 3_000_000L).zip(longs().between(0, 4_000_000L),
            (height, more) -> new Stadium(new Length(height + more), new Length(height)));
    private static final Gen<List<Stadium>> ONE_OR_TWO = lists().of(OVALS).ofSizeBetween(1, 2);
    private static final Gen<List<Length>> DISCS = lists().of(Discs.TRADE).ofSizeBetween(1, 3);

    private static List<Body> bodies(List<? extends Body> rigid, List<Length> discs) {
        return Stream.concat(rigid.stream(), discs.stream().map(FreeDisc::new)).map(Body.class::cast).toList();
    }

    @Test
    void ovalsLieInsideAndDoNotOverlap() {
        laws().withExamples(EXAMPLES).forAll(ONE_OR_TWO, DISCS)
                .checkAssert((ovals, discs) -> assertFit(bodies(ovals, discs)));
    }

    @Test
    void setsLieInsideAndDoNotOverlap() {
        laws().withExamples(EXAMPLES).forAll(Discs.sets(3), DISCS, OVALS).checkAssert((set, discs, oval) -> assertFit(
                bodies(List.of(new DiscSet(set), oval), discs)));
    }

    @Test
    @Tag("slow")
    void manyBodiesLieInsideAndDoNotOverlap() {
        laws().withExamples(1000).forAll(Discs.sets(3), DISCS, ONE_OR_TWO).checkAssert((set, discs, ovals) -> assertFit(
                bodies(Stream.concat(Stream.of(new DiscSet(set)), ovals.stream()).toList(), discs)));
    }

    /** Checks each body's discs, and of an oval many discs between its ends. */
    private static void assertFit(List<Body> bodies) {
        Enclosure enclosure = Packing.of(bodies);
        List<List<PlacedDisc>> filled = new ArrayList<>();
        int from = 0;
        for (Body body : bodies) {
            int to = from + body.enclosure().discs().size();
            List<PlacedDisc> placed = enclosure.discs().subList(from, to);
            filled.add(body instanceof Stadium ? between(placed) : placed);
            assertRigid(body.enclosure().discs(), placed);
            from = to;
        }
        Exactly.assertHolds(enclosure, enclosure.discs().stream().map(PlacedDisc::diameter).toList());
        IntStream.range(0, filled.size()).forEach(i -> IntStream.range(0, i).forEach(j -> filled.get(i)
                .forEach(one -> filled.get(j).forEach(other -> Exactly.assertApart(enclosure, one, other)))));
    }

    private static List<PlacedDisc> between(List<PlacedDisc> ends) {
        PlacedDisc one = ends.get(0);
        PlacedDisc other = ends.get(1);
        return IntStream.rangeClosed(0, 64).mapToObj(i -> new PlacedDisc(one.xMm() + (other.xMm() - one.xMm()) * i / 64,
                one.yMm() + (other.yMm() - one.yMm()) * i / 64, one.diameter())).toList();
    }

    private static void assertRigid(List<PlacedDisc> alone, List<PlacedDisc> placed) {
        for (int i = 1; i < alone.size(); i++) {
            assertEquals(alone.get(i).gapMm(alone.get(0)), placed.get(i).gapMm(placed.get(0)), 1e-12);
            assertEquals(alone.get(i).diameter(), placed.get(i).diameter());
        }
    }

    @Test
    void orderOfBodiesDoesNotMatter() {
        laws().withExamples(EXAMPLES).forAll(ONE_OR_TWO, DISCS, longs().all()).check((ovals, discs, seed) -> {
            List<Body> shuffled = new ArrayList<>(bodies(ovals, discs));
            Collections.shuffle(shuffled, new Random(seed));
            Enclosure one = Packing.of(bodies(ovals, discs));
            Enclosure other = Packing.of(shuffled);
            return one.upperDiameter().equals(other.upperDiameter())
                    && one.lowerDiameter().equals(other.lowerDiameter());
        });
    }

    @Test
    void smallerBodiesFromTheSamePlacesNeverNeedMore() {
        laws().withExamples(EXAMPLES).forAll(ONE_OR_TWO, DISCS, longs().between(1, 500_000)).checkAssert(
                (ovals, discs, less) -> {
                    Enclosure large = Packing.of(bodies(ovals, discs));
                    List<Length> smaller = discs.stream().map(d -> d.minus(new Length(less))).toList();
                    Enclosure small = Packing.of(bodies(ovals, smaller), large);
                    assertTrue(small.upperDiameter().compareTo(large.upperDiameter()) <= 0,
                            () -> small + " after " + large);
                });
    }

    @Test
    void oneDiscMoreNeverNeedsLess() {
        laws().withExamples(EXAMPLES).forAll(ONE_OR_TWO, DISCS).check((ovals, discs) -> {
            Enclosure all = Packing.of(bodies(ovals, discs));
            Enclosure fewer = Packing.of(bodies(ovals, discs.subList(1, discs.size())));
            return all.upperDiameter().compareTo(fewer.upperDiameter()) >= 0
                    && all.upperDiameter().compareTo(fewer.lowerDiameter()) >= 0;
        });
    }

    @Test
    void ovalNeedsAsMuchAsManyDiscsInARow() {
        Stadium oval = new Stadium(mm("1.2"), mm("0.8"));
        DiscSet row = new DiscSet(IntStream.rangeClosed(-8, 8)
                .mapToObj(i -> new DiscSet.Disc(mm("0.025").times(i), Length.ZERO, mm("0.8"))).toList());
        laws().withExamples(10).forAll(lists().of(Discs.TRADE).ofSize(2)).checkAssert(discs -> {
            Enclosure expected = Packing.of(bodies(List.of(row), discs));
            Discs.assertNear(expected.upperDiameter().mm(), Packing.of(bodies(List.of(oval), discs)).upperDiameter(),
                    1e-3);
        });
    }
}
