/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.DIAMETERS;
import static org.ferrule.geometry.Discs.disc;
import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.doubles;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;
import org.quicktheories.core.Gen;

/** Rigid sets of discs, alone and with a free disc. */
class DiscSetTest {
    private static final Gen<List<DiscSet.Disc>> SETS = Discs.sets(5);

    @Test
    void oneDiscNeedsItself() {
        Enclosure enclosure = new DiscSet(List.of(disc("-0.2", "7", "1.1"))).enclosure();
        assertTrue(enclosure.isExact());
        assertEquals(mm("1.1"), enclosure.upperDiameter());
    }

    @Test
    void twoApartNeedGapAndHalvesExactly() {
        Enclosure enclosure = new DiscSet(List.of(disc("-0.2", "0", "0.4"), disc("0.1", "0.4", "0.6"))).enclosure();
        assertTrue(enclosure.isExact());
        assertEquals(mm("1"), enclosure.upperDiameter());
    }

    @Test
    void discWithinAnotherNeedsNothing() {
        Enclosure enclosure = new DiscSet(List.of(disc("0", "0", "2"), disc("0.3", "0", "1"))).enclosure();
        assertTrue(enclosure.isExact());
        assertEquals(mm("2"), enclosure.upperDiameter());
    }

    @Test
    void threeInLineAreExact() {
        Enclosure enclosure = new DiscSet(
                List.of(disc("0", "0", "0.5"), disc("-0.6", "0", "0.5"), disc("0.6", "0", "0.5"))).enclosure();
        assertTrue(enclosure.isExact());
        assertEquals(mm("1.7"), enclosure.upperDiameter());
    }

    @Test
    void refusesEmptySetAndNegativeDiameters() {
        assertThrows(IllegalArgumentException.class, () -> new DiscSet(List.of()));
        assertThrows(IllegalArgumentException.class, () -> disc("0", "0", "-1"));
        DiscSet set = new DiscSet(List.of(disc("0", "0", "1")));
        assertThrows(IllegalArgumentException.class, () -> set.with(mm("-1")));
    }

    @Test
    void agreesWithPlainMinimisation() {
        laws().withExamples(300).forAll(SETS).check(discs -> {
            Enclosure enclosure = new DiscSet(discs).enclosure();
            double radius = Discs.enclosingRadius(enclosure.discs());
            return enclosure.lowerDiameter().mm() / 2 <= radius + 1e-9 && enclosure.gap().thirdNanometres() <= 3
                    && Discs.isInside(enclosure);
        });
    }

    @Test
    void frameOfTheSetDoesNotMatter() {
        laws().forAll(SETS, longs().between(-1_000_000_000L, 1_000_000_000L)).check((discs, shift) -> {
            List<DiscSet.Disc> shifted = discs.stream().map(disc -> new DiscSet.Disc(
                    disc.x().plus(new Length(shift)), disc.y().minus(new Length(shift)), disc.diameter())).toList();
            return new DiscSet(shifted).enclosure().upperDiameter()
                    .equals(new DiscSet(discs).enclosure().upperDiameter());
        });
    }

    @Test
    void largerDiscNeverNeedsLess() {
        laws().forAll(SETS, longs().between(1, 1_000_000)).check((discs, more) -> {
            List<DiscSet.Disc> larger = new ArrayList<>(discs);
            DiscSet.Disc first = discs.get(0);
            larger.set(0, new DiscSet.Disc(first.x(), first.y(), first.diameter().plus(new Length(more))));
            return isPossible(new DiscSet(discs).enclosure(), new DiscSet(larger).enclosure());
        });
    }

    /** Tells whether the smaller one is not proved to need more than the larger one was found to need. */
    private static boolean isPossible(Enclosure smaller, Enclosure larger) {
        return smaller.lowerDiameter().compareTo(larger.upperDiameter()) <= 0;
    }

    @Test
    void touchingPairWithFreeDiscNeedsAsMuchAsThreeFreeDiscs() {
        laws().withExamples(200).forAll(DIAMETERS, DIAMETERS, DIAMETERS).check((a, b, free) -> {
            // An even sum, so that the discs touch exactly.
            Length other = b.plus(new Length((a.thirdNanometres() + b.thirdNanometres()) % 2));
            DiscSet pair = new DiscSet(List.of(new DiscSet.Disc(Length.ZERO, Length.ZERO, a),
                    new DiscSet.Disc(a.plus(other).dividedBy(2), Length.ZERO, other)));
            Enclosure expected = EnclosingCircle.discs(a, other, free);
            Enclosure actual = pair.with(free);
            return isPossible(expected, actual) && isPossible(actual, expected)
                    && actual.gap().thirdNanometres() <= 6;
        });
    }

    @Test
    void wireThatHidesInAPocketNeedsNothingMore() {
        Enclosure enclosure = new DiscSet(List.of(disc("-0.5", "0", "1"), disc("0.5", "0", "1"))).with(mm("0.6"));
        assertTrue(enclosure.isExact());
        assertEquals(mm("2"), enclosure.upperDiameter());
    }

    @Test
    void freeDiscLiesInsideAndOverlapsNothing() {
        laws().withExamples(100).forAll(SETS, DIAMETERS).check((discs, free) -> {
            Enclosure enclosure = new DiscSet(discs).with(free);
            return Discs.isInside(enclosure) && Discs.isFree(enclosure, discs.size())
                    && enclosure.gap().thirdNanometres() <= 6;
        });
    }

    @Test
    void discsAlmostInOnePlaceAreNoTrouble() {
        DiscSet set = new DiscSet(List.of(disc("0", "0", "0.1000007"), disc("0.0000007", "0", "0.1"),
                disc("0", "0", "0.1"), disc("0", "-0.0000003", "0.1")));
        Enclosure enclosure = set.with(mm("0.1"));
        assertTrue(Discs.isInside(enclosure) && Discs.isFree(enclosure, 4));
        assertTrue(enclosure.gap().thirdNanometres() <= 6);
    }

    @Test
    void longSetIsNoTrouble() {
        DiscSet set = new DiscSet(List.of(disc("0", "0", "0.1"), disc("3000", "1", "0.1"), disc("10", "0.1", "1")));
        Enclosure enclosure = set.with(mm("0.3"));
        assertTrue(Discs.isInside(enclosure) && Discs.isFree(enclosure, 3));
        Discs.assertNear(Math.hypot(3000, 1) + 0.1, enclosure.upperDiameter(), 1e-6);
    }

    @Test
    void noOtherPlaceOfTheFreeDiscNeedsLess() {
        laws().withExamples(100).forAll(SETS, DIAMETERS, doubles().between(0.1, 0.3)).check((discs, free, step) -> {
            Length lower = new DiscSet(discs).with(free).lowerDiameter();
            return discs.stream().flatMap(disc -> around(disc, free, step)).filter(disc -> isFree(disc, discs))
                    .allMatch(disc -> needs(discs, disc).compareTo(lower) >= 0);
        });
    }

    private static Stream<DiscSet.Disc> around(DiscSet.Disc disc, Length free, double step) {
        return DoubleStream.iterate(step / 2, angle -> angle < 2 * Math.PI, angle -> angle + step)
                .mapToObj(angle -> touching(disc, free, angle));
    }

    // A tube between two wires apart from it: the best place is somewhere along the tube, in no pocket.
    @Test
    void findsPlaceAlongOneDisc() {
        Gen<DiscSet.Disc> tubes = discs(-50_000, 50_000, 2_000_000, 3_600_000);
        Gen<DiscSet.Disc> wires = discs(3_300_000, 4_200_000, 500_000, 1_500_000);
        laws().withExamples(60).forAll(tubes, wires, wires, DIAMETERS).check((tube, right, left, free) -> {
            List<DiscSet.Disc> discs = List.of(tube, right,
                    new DiscSet.Disc(left.x().negated(), left.y().negated(), left.diameter()));
            Enclosure enclosure = new DiscSet(discs).with(free);
            Length sampled = discs.stream().flatMap(disc -> around(disc, free, 0.02))
                    .filter(disc -> isFree(disc, discs)).map(disc -> needs(discs, disc)).reduce(Length::min)
                    .orElseThrow();
            return enclosure.lowerDiameter().compareTo(sampled) <= 0
                    && enclosure.upperDiameter().compareTo(sampled) <= 0;
        });
    }

    private static Gen<DiscSet.Disc> discs(long least, long most, long thinnest, long thickest) {
        return longs().between(least, most).zip(longs().between(-700_000, 700_000),
                longs().between(thinnest, thickest), (x, y, diameter) -> new DiscSet.Disc(new Length(x),
                        new Length(y), new Length(diameter)));
    }

    private static DiscSet.Disc touching(DiscSet.Disc disc, Length free, double angle) {
        double distance = disc.diameter().plus(free).mm() / 2;
        return new DiscSet.Disc(disc.x().plus(Length.ofMm(distance * Math.cos(angle))),
                disc.y().plus(Length.ofMm(distance * Math.sin(angle))), free);
    }

    private static boolean isFree(DiscSet.Disc free, List<DiscSet.Disc> discs) {
        return discs.stream().allMatch(disc -> Math.hypot(free.x().minus(disc.x()).mm(), free.y().minus(disc.y()).mm())
                - disc.diameter().plus(free.diameter()).mm() / 2 > -1e-9);
    }

    private static Length needs(List<DiscSet.Disc> discs, DiscSet.Disc free) {
        List<DiscSet.Disc> all = new ArrayList<>(discs);
        all.add(free);
        return new DiscSet(all).enclosure().upperDiameter().plus(new Length(6));
    }

    @Test
    void searchTriesFewPlaces() {
        FixedDiscs shafts = new FixedDiscs(3);
        shafts.set(0, -3_000_000, 0, 3_000_000);
        shafts.set(1, 3_200_000, 500_000, 2_700_000);
        shafts.set(2, 400_000, 5_500_000, 2_000_000);
        assertTrue(FreeDiscSearch.search(shafts, 2_900_000).places() < 120);
        assertTrue(FreeDiscSearch.search(shafts, 1_000_000).places() < 20);
    }

    @Test
    void largerFreeDiscNeverNeedsLess() {
        laws().withExamples(100).forAll(SETS, DIAMETERS, longs().between(1, 1_000_000)).check((discs, free, more) -> {
            DiscSet set = new DiscSet(discs);
            return isPossible(set.with(free), set.with(free.plus(new Length(more))));
        });
    }

    @Test
    void freeDiscNeverHelps() {
        laws().withExamples(100).forAll(SETS, DIAMETERS).check((discs, free) -> isPossible(
                new DiscSet(discs).enclosure(), new DiscSet(discs).with(free)));
    }
}
