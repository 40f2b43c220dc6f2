/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.device.Contour;
import org.ferrule.fit.figure.Figure;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** The room of ovals and bundles with a wire beside them; a nanometre is what a search leaves open. */
class RoomTest {
    private static final Length NANOMETRE = new Length(3);
    private static final int CASES = 150;
    /** Only the figures count here, not what is printed. */
    private static final Dimension ANY = Dimension.parse("1 mm");

    private final Random random = new Random(7);

    @Test
    void thickerPartsNeverNeedLess() {
        for (int i = 0; i < CASES; i++) {
            Contour contour = contour();
            List<Figure> figures = figures(contour);
            Optional<Figure> wire = wire();
            assertNotLess(Room.of(new Profile(contour, figures), wire),
                    Room.of(new Profile(contour, thicker(figures)), wire));
        }
    }

    @Test
    void wireNeverNeedsLess() {
        for (int i = 0; i < CASES; i++) {
            Contour contour = contour();
            List<Figure> figures = figures(contour);
            Optional<Figure> wire = wire();
            Room beside = Room.of(new Profile(contour, figures), wire);
            assertNotLess(Room.of(new Profile(contour, figures), Optional.empty()), beside);
            assertNotLess(beside, Room.of(new Profile(contour, figures), wire.map(w -> thicker(List.of(w)).get(0))));
        }
    }

    @Test
    void wireThatHidesLeavesTheLanesInOrder() {
        Contour.Bundle pair = new Contour.Bundle(List.of(member(-450_000, 0), member(450_000, 0)));
        Figure disc = Figure.exactly(new Length(2_700_000));
        for (int i = 1; i < CASES; i++) {
            Length centre = new Length(15_000L * i);
            Figure wire = new Figure(centre.dividedBy(2), centre, centre.plus(new Length(random.nextInt(2000))),
                    false);
            assertTrue(Room.of(new Profile(pair, List.of(disc, disc)), Optional.of(wire)).proved());
        }
    }

    private static void assertNotLess(Room less, Room more) {
        assertTrue(more.needed().low().plus(NANOMETRE).compareTo(less.needed().low()) >= 0, "low");
        assertTrue(more.needed().centre().plus(NANOMETRE).compareTo(less.needed().centre()) >= 0, "centre");
        assertTrue(more.needed().high().plus(NANOMETRE).compareTo(less.needed().high()) >= 0, "high");
        assertTrue(less.proved() && more.proved());
    }

    private Contour contour() {
        if (random.nextBoolean()) {
            return new Contour.Oval(ANY, ANY);
        }
        List<Contour.Member> members = new ArrayList<>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            members.add(member(random.nextInt(600_000) - 300_000, random.nextInt(600_000) - 300_000));
        }
        return new Contour.Bundle(members);
    }

    private static Contour.Member member(int xNanometres, int yNanometres) {
        return new Contour.Member(new Length(3L * xNanometres), new Length(3L * yNanometres), ANY);
    }

    private List<Figure> figures(Contour contour) {
        if (contour instanceof Contour.Bundle bundle) {
            return bundle.members().stream().map(m -> figure(400_000)).toList();
        }
        return List.of(figure(1_200_000), figure(500_000));
    }

    private Optional<Figure> wire() {
        return Optional.of(figure(300_000));
    }

    private Figure figure(int nanometres) {
        long centre = 3L * (nanometres + random.nextInt(200_000));
        return new Figure(new Length(centre - random.nextInt(30_000)), new Length(centre),
                new Length(centre + random.nextInt(30_000)), false);
    }

    private List<Figure> thicker(List<Figure> figures) {
        Length more = new Length(random.nextInt(100_000));
        return figures.stream()
                .map(f -> new Figure(f.low().plus(more), f.centre().plus(more), f.high().plus(more), false)).toList();
    }
}
