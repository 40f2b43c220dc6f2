/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds of every section. */
class FlowLawsTest {
    private static final int FEW = 30;
    private static final int MANY = 100;
    /** What a search may miss of an end, as a part of it. */
    private static final double MISSED = 1e-3;
    /** Discs are placed to a nanometre, which lets them sink into the wall. */
    private static final double ROUNDED = 1e-6;

    @Test
    void turnedOrMirroredSectionLetsThroughTheSame() {
        Sections.check(FEW, random -> {
            List<Circle> discs = Sections.random(random, LumenFlow.MOST_DEVICES);
            double angle = 2 * Math.PI * random.nextDouble();
            Complex turn = new Complex(Math.cos(angle), Math.sin(angle));
            List<Circle> turned = discs.stream()
                    .map(disc -> new Circle(disc.centre().conjugate().times(turn), disc.radius())).toList();
            assertEquals(share(discs), share(turned), 1e-9);
        });
    }

    @Test
    void thickerDiscsLetLessThrough() {
        Sections.check(FEW, random -> {
            List<Circle> discs = Sections.random(random, LumenFlow.MOST_DEVICES);
            List<Circle> thinner = discs.stream()
                    .map(disc -> new Circle(disc.centre(), disc.radius() * (0.8 + 0.2 * random.nextDouble()))).toList();
            assertTrue(share(discs) < share(thinner));
        });
    }

    @Test
    void oneDiscMoreLetsLessThrough() {
        Sections.check(FEW, random -> {
            List<Circle> discs = Sections.random(random, LumenFlow.MOST_DEVICES);
            double all = share(discs);
            double fewer = share(discs.subList(1, discs.size()));
            assertTrue(0 < all && all < fewer && fewer <= 1, discs::toString);
        });
    }

    @Test
    void intervalHoldsEveryArrangement() {
        Sections.check(3, FlowLawsTest::assertHolds);
    }

    @Test
    @Tag("slow")
    void intervalHoldsEveryArrangementOfMany() {
        Sections.check(MANY, FlowLawsTest::assertHolds);
    }

    private static void assertHolds(Random random) {
        List<Circle> discs = Sections.random(random, 3);
        OpenFraction fraction = interval(Sections.diameters(discs));
        for (int i = 0; i < 50; i++) {
            double share = share(elsewhere(discs, random));
            assertTrue(fraction.low() <= share * (1 + ROUNDED) && share <= fraction.high() * (1 + ROUNDED),
                    discs + ": " + share + " " + fraction);
        }
    }

    private static List<Circle> elsewhere(List<Circle> discs, Random random) {
        List<Circle> moved = discs.stream().map(disc -> new Circle(
                new Complex(2 * random.nextDouble() - 1, 2 * random.nextDouble() - 1), disc.radius())).toList();
        return Room.settle(moved).orElse(discs);
    }

    @Test
    void thickerDevicesNeverRaiseTheUpperEnd() {
        Sections.check(3, FlowLawsTest::assertUpperEndFalls);
    }

    @Test
    @Tag("slow")
    void thickerDevicesNeverRaiseTheUpperEndOfMany() {
        Sections.check(MANY, FlowLawsTest::assertUpperEndFalls);
    }

    private static void assertUpperEndFalls(Random random) {
        List<Length> thick = Sections.diameters(Sections.random(random, 3));
        double high = interval(thick).high();
        List<Length> thinner = thick.stream().map(length -> length.times(9).dividedBy(10)).toList();
        assertTrue(high <= interval(thinner).high() * (1 + MISSED), thick::toString);
        for (int i = 0; i < thick.size(); i++) {
            assertTrue(high <= interval(without(thick, i)).high() * (1 + MISSED), thick + " without " + i);
        }
    }

    private static List<Length> without(List<Length> devices, int left) {
        return IntStream.range(0, devices.size()).filter(i -> i != left).mapToObj(devices::get).toList();
    }

    /** Where all are thin enough to pass each other everywhere, the lower end falls too. */
    @Test
    void furtherOrThickerWiresNeverRaiseTheLowerEnd() {
        Sections.check(2, FlowLawsTest::assertLowerEndFalls);
    }

    @Test
    @Tag("slow")
    void furtherOrThickerWiresNeverRaiseTheLowerEndOfMany() {
        Sections.check(MANY, FlowLawsTest::assertLowerEndFalls);
    }

    private static void assertLowerEndFalls(Random random) {
        List<Length> wires = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            wires.add(new Length(300_000 + random.nextInt(1_200_000)));
        }
        double low = interval(wires).low();
        List<Length> thinner = wires.stream().map(length -> length.times(9).dividedBy(10)).toList();
        assertTrue(low <= interval(thinner).low() * (1 + MISSED), wires::toString);
        for (int i = 0; i < wires.size(); i++) {
            assertTrue(low <= interval(without(wires, i)).low() * (1 + MISSED), wires + " without " + i);
        }
    }

    @Test
    @Tag("slow")
    void moreTermsChangeLittle() {
        Sections.check(20 * MANY, random -> {
            List<Circle> discs = Sections.random(random, LumenFlow.MOST_DEVICES);
            double change = new Multipoles(discs, 16).share() / new Multipoles(discs, 32).share() - 1;
            assertTrue(change >= -1e-12 && change < 1e-3, change + " " + discs);
        });
    }

    private static double share(List<Circle> discs) {
        return LumenFlow.at(Sections.LUMEN, Sections.placed(discs));
    }

    private static OpenFraction interval(List<Length> devices) {
        return LumenFlow.interval(Sections.LUMEN, devices);
    }
}
