/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/** Random and hand-made sections that the tests of this package share. */
final class Sections {
    /** A lumen of radius 1 mm, so that places in mm are places in radii. */
    static final Length LUMEN = mm("2");

    private Sections() {
    }

    static Length mm(String decimal) {
        return Length.of(decimal, LengthUnit.MILLIMETRE);
    }

    static Circle circle(double x, double y, double radius) {
        return new Circle(new Complex(x, y), radius);
    }

    static PlacedDisc disc(double x, double y, String diameter) {
        return new PlacedDisc(x, y, mm(diameter));
    }

    /** Runs a law on that many cases, the same in every build; the property QT_SEED gives others. */
    static void check(int cases, Consumer<Random> law) {
        long seed = Long.getLong("QT_SEED", 0);
        for (int i = 0; i < cases; i++) {
            try {
                law.accept(new Random(seed + 1_000_003L * i));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("case " + i + " of seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }

    /** Draws discs of 0.04 to 0.6 of the lumen that lie side by side in it, often touching. */
    static List<Circle> random(Random random, int most) {
        while (true) {
            List<Circle> discs = new ArrayList<>();
            int count = 1 + random.nextInt(most);
            for (int i = 0; i < count; i++) {
                discs.add(scattered(random, 0.04 * Math.pow(15, random.nextDouble())));
            }
            List<Circle> settled = Room.settle(discs).orElse(List.of());
            if (!settled.isEmpty()) {
                return settled;
            }
        }
    }

    private static Circle scattered(Random random, double radius) {
        double distance = Math.sqrt(random.nextDouble()) * (1 - radius);
        double angle = 2 * Math.PI * random.nextDouble();
        return circle(distance * Math.cos(angle), distance * Math.sin(angle), radius);
    }

    /** Places discs, given in radii, in the {@link #LUMEN}. */
    static List<PlacedDisc> placed(List<Circle> discs) {
        return discs.stream().map(c -> new PlacedDisc(c.centre().re(), c.centre().im(), Length.ofMm(2 * c.radius())))
                .toList();
    }

    static List<Length> diameters(List<Circle> discs) {
        return placed(discs).stream().map(PlacedDisc::diameter).toList();
    }
}
