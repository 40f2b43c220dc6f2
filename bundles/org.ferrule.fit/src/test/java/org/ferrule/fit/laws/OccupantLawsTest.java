/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Laws of devices that pass beside others. */
class OccupantLawsTest {
    private static final int CASES = 30;
    private static final int MANY_CASES = 4000;

    @Test
    void generatorBringsUpEveryVerdict() {
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        Cases.check(4 * CASES,
                random -> counts.merge(RandomShared.any(random).answer().in().verdict(), 1, Integer::sum));
        for (Verdict verdict : Verdict.values()) {
            assertTrue(counts.getOrDefault(verdict, 0) > CASES / 10, counts.toString());
        }
    }

    @Test
    void anotherOccupantNeverHelps() {
        Cases.check(CASES, OccupantLawsTest::assertAnotherNeverHelps);
    }

    private static void assertAnotherNeverHelps(Random random) {
        RandomShared shared = RandomShared.any(random);
        FitAnswer one = shared.withOneLess().answer();
        assertNotBetter(one, shared.answer());
        assertNotBetter(shared.passage().answer(), one);
    }

    @Test
    void thickerOccupantNeverHelps() {
        Cases.check(CASES, OccupantLawsTest::assertThickerNeverHelps);
    }

    private static void assertThickerNeverHelps(Random random) {
        RandomShared shared = RandomShared.any(random);
        int more = change(random);
        assertNotBetter(shared.answer(), shared.withOccupants(o -> o.with(f -> f.plus(more))).answer());
    }

    @Test
    void usedOccupantNeverHelps() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            assertNotBetter(shared.answer(), shared.withOccupants(RandomOccupant::afterUse).answer());
        });
    }

    @Test
    void thickerDeviceNeverHelps() {
        Cases.check(CASES, OccupantLawsTest::assertThickerDeviceNeverHelps);
    }

    private static void assertThickerDeviceNeverHelps(Random random) {
        RandomShared shared = RandomShared.any(random);
        int more = change(random);
        assertNotBetter(shared.answer(),
                shared.withPassage(shared.passage().withShaft(f -> f.plus(more))).answer());
    }

    @Test
    void narrowerLumenNeverHelps() {
        Cases.check(CASES, OccupantLawsTest::assertNarrowerNeverHelps);
    }

    private static void assertNarrowerNeverHelps(Random random) {
        RandomShared shared = RandomShared.any(random);
        int less = change(random);
        assertNotBetter(shared.answer(),
                shared.withPassage(shared.passage().withBore(f -> f.plus(-less))).answer());
    }

    @Test
    void widerFiguresOfOccupantsNeverTurnDoubtIntoFits() {
        Cases.check(CASES, OccupantLawsTest::assertNoNewFits);
    }

    private static void assertNoNewFits(Random random) {
        RandomShared shared = RandomShared.any(random);
        int more = change(random);
        FitAnswer wider = shared.withOccupants(o -> o.with(f -> f.wider(more))).answer();
        FitAnswer before = shared.answer();
        for (Phase phase : Phase.values()) {
            boolean doubtful = before.in(phase).verdict() != Verdict.FITS;
            assertTrue(!doubtful || wider.in(phase).verdict() != Verdict.FITS);
        }
    }

    @Test
    void occupantsThatDoNotReachIntoTheLumenDoNotCount() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            int out = -shared.passage().boreLength() - random.nextInt(3);
            assertSame(shared.passage().answer(), shared.withOccupants(o -> o.at(out)).answer());
        });
    }

    @Test
    void unitOfTheLabelNeverChangesAVerdict() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            FitAnswer millimetres = shared.answer();
            for (LengthUnit unit : List.of(LengthUnit.INCH, LengthUnit.FRENCH)) {
                assertSame(millimetres, shared.question(unit).answer());
            }
        });
    }

    @Test
    void orderOfOccupantsDoesNotMatter() {
        Cases.check(CASES, random -> {
            RandomShared shared = RandomShared.any(random);
            List<RandomOccupant> turned = new ArrayList<>(shared.occupants());
            Collections.reverse(turned);
            assertSame(shared.answer(), new RandomShared(shared.passage(), turned).answer());
        });
    }

    @Test
    @Tag("slow")
    void monotonyHoldsInMany() {
        Cases.check(MANY_CASES, random -> {
            assertAnotherNeverHelps(random);
            assertThickerNeverHelps(random);
            assertThickerDeviceNeverHelps(random);
            assertNarrowerNeverHelps(random);
            assertNoNewFits(random);
        });
    }

    private static int change(Random random) {
        return random.nextInt(random.nextBoolean() ? 3 : 600);
    }

    private static void assertNotBetter(FitAnswer before, FitAnswer harder) {
        for (Phase phase : Phase.values()) {
            Verdict was = before.in(phase).verdict();
            assertTrue(harder.in(phase).verdict().compareTo(was) >= 0, was + " became " + harder.in(phase).verdict());
        }
    }

    private static void assertSame(FitAnswer a, FitAnswer b) {
        for (Phase phase : Phase.values()) {
            PhaseAnswer one = a.in(phase);
            PhaseAnswer other = b.in(phase);
            assertEquals(one.verdict(), other.verdict());
            assertEquals(one.clearance(), other.clearance());
            assertEquals(one.limiting(), other.limiting());
            assertEquals(one.reach(), other.reach());
        }
    }
}
