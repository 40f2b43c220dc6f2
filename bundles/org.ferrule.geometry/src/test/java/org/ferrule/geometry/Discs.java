/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.QuickTheory.qt;
import static org.quicktheories.generators.SourceDSL.arbitrary;
import static org.quicktheories.generators.SourceDSL.lists;
import static org.quicktheories.generators.SourceDSL.longs;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.quicktheories.QuickTheory;
import org.quicktheories.core.Gen;

/** What the tests of this package share: generators, checks of the evidence and a slow second opinion. */
final class Discs {
    /** Diameters of wires and shafts, from 0.1 to 4 mm. */
    static final Gen<Length> DIAMETERS = longs().between(300_000L, 12_000_000L).map(Length::new);
    /** Diameters of the trade, of which some come often, so that equal ones meet: 0.014 in, 2.6 Fr. */
    static final Gen<Length> TRADE = longs().between(600_000L, 7_500_000L).map(Length::new)
            .mix(arbitrary().pick(new Length(1_066_800), new Length(2_600_000)), 40);
    private static final Gen<Length> PLACES = longs().between(-6_000_000L, 6_000_000L).map(Length::new);
    private static final int HALVINGS = 70;
    /** A search of ten discs takes a quarter of a second: with the thousands of steps that are usual, no failure ends. */
    private static final int SHRINK_CYCLES = 100;

    private Discs() {
    }

    /** Returns the theories, with examples that are the same every time unless QT_SEED says otherwise. */
    static QuickTheory laws() {
        QuickTheory laws = System.getProperty("QT_SEED") == null ? qt().withFixedSeed(20261125) : qt();
        return laws.withShrinkCycles(SHRINK_CYCLES);
    }

    /** Returns a source of random numbers, the same every time unless QT_SEED says otherwise. */
    static Random random() {
        return new Random(Long.getLong("QT_SEED", 20261125));
    }

    static Length mm(String decimal) {
        return Length.of(decimal, LengthUnit.MILLIMETRE);
    }

    static DiscSet.Disc disc(String x, String y, String diameter) {
        return new DiscSet.Disc(mm(x), mm(y), mm(diameter));
    }

    /** Sets of discs that overlap, hold each other, touch or lie apart, as it happens. */
    static Gen<List<DiscSet.Disc>> sets(int most) {
        return lists().of(PLACES.zip(PLACES, DIAMETERS, DiscSet.Disc::new)).ofSizeBetween(1, most);
    }

    /** Checks that all discs lie in the circle of the upper bound. */
    static boolean isInside(Enclosure enclosure) {
        double radius = enclosure.upperDiameter().mm() / 2;
        return enclosure.discs().stream().allMatch(disc -> disc.reachMm() <= radius + 1e-9);
    }

    /** Checks that a disc overlaps none of the discs before it in the list. */
    static boolean isFree(Enclosure enclosure, int index) {
        PlacedDisc disc = enclosure.discs().get(index);
        return enclosure.discs().stream().limit(index).allMatch(other -> disc.gapMm(other) >= -1e-9);
    }

    /** Returns the radius of the smallest circle round placed discs, by a plain minimisation of a convex function. */
    static double enclosingRadius(List<PlacedDisc> discs) {
        return minimum(x -> minimum(y -> discs.stream().mapToDouble(disc -> reach(disc, x, y)).max().orElseThrow()));
    }

    private static double reach(PlacedDisc disc, double x, double y) {
        return Math.hypot(disc.xMm() - x, disc.yMm() - y) + disc.diameter().mm() / 2;
    }

    /** Returns the minimum of a convex function between -20 and 20. */
    private static double minimum(DoubleUnaryOperator convex) {
        double low = -20;
        double high = 20;
        for (int i = 0; i < HALVINGS; i++) {
            double left = low + (high - low) * 0.4;
            double right = low + (high - low) * 0.6;
            if (convex.applyAsDouble(left) < convex.applyAsDouble(right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return convex.applyAsDouble((low + high) / 2);
    }

    static void assertNear(double expectedMm, Length actual, double toleranceMm) {
        assertTrue(Math.abs(expectedMm - actual.mm()) <= toleranceMm, () -> actual + ", expected " + expectedMm);
    }
}
