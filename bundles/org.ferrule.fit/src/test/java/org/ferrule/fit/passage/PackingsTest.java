/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.ferrule.geometry.Body;
import org.ferrule.geometry.DiscSet;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.FreeDisc;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.geometry.Stadium;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Circles round bodies side by side, and whether they exceed a lumen, however and in whatever order they are asked for. */
class PackingsTest {
    private static final Length LEAST = new Length(1);
    private static final int CASES = 15;

    private final Packings packings = new Packings();

    private static List<Body> discs(String... diameters) {
        return Stream.of(diameters).<Body>map(d -> new FreeDisc(length(d))).toList();
    }

    private static List<Body> equal(int number) {
        return Collections.nCopies(number, new FreeDisc(length("1 mm")));
    }

    @Test
    void twoDiscsNeedTheirSumAndNoMore() {
        List<Body> two = discs("1 mm", "0.5 mm");
        Length sum = length("1.5 mm");
        assertEquals(sum, packings.around(two).upperDiameter());
        assertEquals(sum, packings.lowerDiameter(two));
        assertFalse(packings.mayExceed(two, sum));
        assertFalse(packings.exceed(two, sum));
        assertTrue(packings.mayExceed(two, sum.minus(LEAST)));
        assertTrue(packings.exceed(two, sum.minus(LEAST)));
    }

    @Test
    void oneBodyNeedsItself() {
        assertEquals(length("0.5 mm"), packings.around(discs("0.5 mm")).upperDiameter());
        assertEquals(length("0.5 mm"), packings.lowerDiameter(discs("0.5 mm")));
        assertFalse(packings.mayExceed(discs("0.5 mm"), length("0.5 mm")));
    }

    /** 1 + 2/sqrt(3), 1 + sqrt(2) and 1 + 1/sin(36°) for discs of 1 mm (Graham et al., 1998). */
    @Test
    void equalDiscsExceedWhatIsNarrowerThanThePublishedCircle() {
        assertExceeds(equal(3), "2.15470 mm", "2.15471 mm");
        assertExceeds(equal(4), "2.41421 mm", "2.41422 mm");
        assertExceeds(equal(5), "2.70130 mm", "2.70131 mm");
    }

    /** Asked anew, and where the circle is known already. */
    private static void assertExceeds(List<Body> bodies, String narrower, String wider) {
        Packings known = new Packings();
        known.around(bodies);
        for (Packings asked : List.of(new Packings(), known)) {
            assertTrue(asked.mayExceed(bodies, length(narrower)), bodies.size() + " discs in " + narrower);
            assertFalse(asked.mayExceed(bodies, length(wider)), bodies.size() + " discs in " + wider);
            assertTrue(asked.exceed(bodies, length(narrower)), bodies.size() + " discs in " + narrower);
            assertFalse(asked.exceed(bodies, length(wider)), bodies.size() + " discs in " + wider);
        }
    }

    /** Eight discs, seven of them round one, need 1 + 1/sin(180°/7) (Graham et al., 1998). */
    @Test
    void moreBodiesThanCanBeSearchedNeedAsMuchAsSomeAndAreGivenEnough() {
        Enclosure nine = packings.around(equal(9));
        assertEquals(3.30476, nine.lowerDiameter().mm(), 1e-5);
        assertEquals(nine.lowerDiameter(), packings.lowerDiameter(equal(9)));
        // 1 + sqrt(2) + sqrt(6), the published circle of nine
        assertTrue(nine.upperDiameter().mm() >= 3.61312, nine.toString());
        assertEquals(List.of(), nine.discs());
    }

    @Test
    void discsOfPlacedBodiesComeInTheOrderGiven() {
        DiscSet set = new DiscSet(List.of(new DiscSet.Disc(Length.ZERO, Length.ZERO, length("0.3 mm")),
                new DiscSet.Disc(length("0.5 mm"), Length.ZERO, length("0.7 mm"))));
        List<Body> bodies = List.of(new FreeDisc(length("0.4 mm")), set, new FreeDisc(length("1 mm")),
                new Stadium(length("1.2 mm"), length("0.6 mm")));
        assertEquals(Stream.of("0.4 mm", "0.3 mm", "0.7 mm", "1 mm", "0.6 mm", "0.6 mm")
                .map(d -> length(d)).toList(), diameters(packings.placed(bodies)));
        assertEquals(List.of(1, 2, 1, 2), bodies.stream().map(Packings::discs).toList());
        assertEquals(packings.around(bodies).upperDiameter(), packings.placed(bodies).upperDiameter());
    }

    private static List<Length> diameters(Enclosure enclosure) {
        return enclosure.discs().stream().map(PlacedDisc::diameter).toList();
    }

    @Test
    void noCircleIsSmallerThanRoundFewerOfTheSameBodies() {
        Random random = new Random(11);
        for (int i = 0; i < CASES; i++) {
            List<Body> bodies = some(random);
            Enclosure all = packings.around(bodies);
            for (Body one : bodies) {
                List<Body> fewer = new ArrayList<>(bodies);
                fewer.remove(one);
                assertTrue(packings.around(fewer).upperDiameter().compareTo(all.upperDiameter()) <= 0);
                assertTrue(packings.around(fewer).lowerDiameter().compareTo(all.lowerDiameter()) <= 0);
            }
        }
    }

    @Test
    void answersAreThoseOfTheCircleWhateverWasAskedBefore() {
        Random random = new Random(12);
        for (int i = 0; i < CASES; i++) {
            List<Body> bodies = some(random);
            Enclosure circle = packings.around(bodies);
            List<Body> shuffled = new ArrayList<>(bodies);
            Collections.shuffle(shuffled, random);
            assertEquals(circle.upperDiameter(), new Packings().around(shuffled).upperDiameter());
            Packings anew = new Packings();
            Length lumen = circle.upperDiameter().plus(new Length(random.nextInt(60_000) - 30_000));
            assertEquals(circle.upperDiameter().compareTo(lumen) > 0, anew.mayExceed(shuffled, lumen));
            assertEquals(circle.lowerDiameter().compareTo(lumen) > 0, anew.exceed(shuffled, lumen));
            assertTrue(anew.lowerDiameter(shuffled).compareTo(circle.upperDiameter()) <= 0);
        }
    }

    private static List<Body> some(Random random) {
        List<Body> bodies = new ArrayList<>();
        for (int left = 3 + random.nextInt(3); left > 0; left--) {
            bodies.add(new FreeDisc(new Length(600_000 + 3 * random.nextInt(900_000))));
        }
        return bodies;
    }
}
