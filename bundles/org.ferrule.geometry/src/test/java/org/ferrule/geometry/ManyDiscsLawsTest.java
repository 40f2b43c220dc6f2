/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.doubles;
import static org.quicktheories.generators.SourceDSL.integers;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.quicktheories.core.Gen;

/** What holds for the circle round four and more free discs, whatever their sizes. */
class ManyDiscsLawsTest {
    private static final Gen<List<Length>> FOUR_TO_SIX = lists().of(Discs.TRADE).ofSizeBetween(4, 6);
    private static final Gen<List<Length>> SEVEN_TO_TEN = lists().of(Discs.TRADE).ofSizeBetween(7, 10);
    private static final Gen<Long> GROWTHS = longs().between(1, 1_000_000);

    @Test
    void discsLieInsideAndDoNotOverlap() {
        laws().withExamples(200).forAll(FOUR_TO_SIX).checkAssert(ManyDiscsLawsTest::assertCertified);
    }

    @Test
    void manyDiscsLieInsideAndDoNotOverlap() {
        laws().withExamples(10).forAll(SEVEN_TO_TEN).checkAssert(ManyDiscsLawsTest::assertCertified);
    }

    @Test
    void sizesFarApartAreNoTrouble() {
        Gen<List<Length>> sizes = lists().of(doubles().between(6.0, 18.0)
                .map(exponent -> new Length((long) Math.exp(exponent)))).ofSizeBetween(4, 7);
        laws().withExamples(60).forAll(sizes).checkAssert(ManyDiscsLawsTest::assertCertified);
    }

    private static void assertCertified(List<Length> diameters) {
        Enclosure enclosure = EnclosingCircle.discs(diameters);
        Exactly.assertHolds(enclosure, diameters);
        Exactly.assertCertified(enclosure);
    }

    @Test
    void largerDiscNeverNeedsLess() {
        laws().withExamples(150).forAll(FOUR_TO_SIX, integers().between(0, 5), GROWTHS)
                .checkAssert(ManyDiscsLawsTest::assertGrows);
    }

    @Test
    void oneDiscMoreNeverNeedsLess() {
        laws().withExamples(150).forAll(FOUR_TO_SIX).checkAssert(ManyDiscsLawsTest::assertGrowsWithLast);
    }

    @Test
    @Tag("slow")
    void largerOrOneMoreNeverNeedsLessInThousands() {
        laws().withExamples(4000).forAll(FOUR_TO_SIX, integers().between(0, 5), GROWTHS)
                .checkAssert(ManyDiscsLawsTest::assertGrows);
        laws().withExamples(4000).forAll(FOUR_TO_SIX).checkAssert(ManyDiscsLawsTest::assertGrowsWithLast);
    }

    /**
     * A search that proves nothing may miss the best arrangement of the smaller case, but not often. Of nine and ten discs
     * it has missed by up to 0.06 %; where the law must hold, a warm start keeps it.
     */
    @Test
    @Tag("slow")
    void largerOrOneMoreOfManyNeedsLessInTwoOfAHundredAtMost() {
        int[] needsLess = { 0 };
        laws().withExamples(100).forAll(SEVEN_TO_TEN, GROWTHS).checkAssert((diameters, growth) -> {
            List<Length> larger = new ArrayList<>(diameters);
            larger.set(0, larger.get(0).plus(new Length(growth)));
            needsLess[0] += needsLess(larger, diameters) ? 1 : 0;
            needsLess[0] += needsLess(diameters, diameters.subList(0, diameters.size() - 1)) ? 1 : 0;
        });
        assertTrue(needsLess[0] <= 200 * 0.02, () -> needsLess[0] + " of 200");
    }

    private static boolean needsLess(List<Length> more, List<Length> less) {
        Enclosure large = EnclosingCircle.discs(more);
        Enclosure small = EnclosingCircle.discs(less);
        assertTrue(large.upperDiameter().compareTo(small.lowerDiameter()) >= 0, () -> more + " and " + less);
        return large.upperDiameter().compareTo(small.upperDiameter()) < 0;
    }

    private static void assertGrows(List<Length> diameters, int which, long growth) {
        List<Length> larger = new ArrayList<>(diameters);
        int i = which % diameters.size();
        larger.set(i, larger.get(i).plus(new Length(growth)));
        assertNotLess(larger, diameters);
    }

    private static void assertGrowsWithLast(List<Length> diameters) {
        assertNotLess(diameters, diameters.subList(0, diameters.size() - 1));
    }

    private static void assertNotLess(List<Length> more, List<Length> less) {
        Enclosure large = EnclosingCircle.discs(more);
        Enclosure small = EnclosingCircle.discs(less);
        assertTrue(large.upperDiameter().compareTo(small.upperDiameter()) >= 0,
                () -> more + " need " + large + ", but " + less + " need " + small);
        assertTrue(large.upperDiameter().compareTo(small.lowerDiameter()) >= 0);
    }

    @Test
    void orderOfDiscsDoesNotMatter() {
        laws().withExamples(100).forAll(FOUR_TO_SIX, longs().all()).check((diameters, seed) -> {
            List<Length> shuffled = new ArrayList<>(diameters);
            Collections.shuffle(shuffled, new Random(seed));
            Enclosure one = EnclosingCircle.discs(diameters);
            Enclosure other = EnclosingCircle.discs(shuffled);
            return one.upperDiameter().equals(other.upperDiameter())
                    && one.lowerDiameter().equals(other.lowerDiameter());
        });
    }

    @Test
    void discsTenTimesAsLargeNeedTenTimesAsMuch() {
        laws().withExamples(100).forAll(FOUR_TO_SIX).checkAssert(diameters -> {
            Length one = EnclosingCircle.discs(diameters).upperDiameter();
            Length ten = EnclosingCircle.discs(diameters.stream().map(d -> d.times(10)).toList()).upperDiameter();
            // a delta would compare floats, which do not hold such numbers
            assertTrue(Math.abs(one.times(10).minus(ten).thirdNanometres()) <= 11, () -> one + " and " + ten);
        });
    }

    @Test
    void sizelessDiscNeedsNothing() {
        laws().withExamples(50).forAll(FOUR_TO_SIX).checkAssert(diameters -> {
            List<Length> more = new ArrayList<>(diameters);
            more.add(1, Length.ZERO);
            Enclosure enclosure = EnclosingCircle.discs(more);
            assertEquals(EnclosingCircle.discs(diameters).upperDiameter(), enclosure.upperDiameter());
            Exactly.assertHolds(enclosure, more);
            Exactly.assertCertified(enclosure);
        });
    }
}
