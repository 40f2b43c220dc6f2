/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.opinion;

import static org.ferrule.fit.sample.SampleDevice.balloon;
import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleDevice.guide;
import static org.ferrule.fit.sample.SampleDevice.rod;
import static org.ferrule.fit.sample.SampleQuestion.passage;
import static org.ferrule.fit.sample.Texts.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.fit.check.Finding;
import org.ferrule.fit.check.PassageCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Contradiction;
import org.ferrule.fit.engineering.opinion.SecondOpinion.Difference;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.statistics.BinomialInterval;
import org.junit.jupiter.api.Test;

class SecondOpinionsTest {
    private static final int MANY = 20_000;

    private static SecondOpinion in(SampleQuestion question, int samples) {
        return SecondOpinions.of(question.question(), Phase.IN, 7, samples);
    }

    private static SampleDevice rodOf(String diameter) {
        return rod("rod", DeviceKind.MICROCATHETER, "135 cm", diameter);
    }

    private static void assertShare(double expected, SecondOpinion opinion) {
        BinomialInterval share = opinion.share(0.9999);
        assertTrue(share.low() <= expected && expected <= share.high(), expected + " is not in " + share);
        assertTrue(opinion.agrees(), () -> opinion.contradictions().toString());
    }

    /** Two even distributions of the same width about the same centre overlap in half of all pairs. */
    @Test
    void halfOfAllPartsOverlapWhenBothLieAboutTheSameCentre() {
        assertShare(0.5, in(passage(rodOf("1 mm ±0.05"), guide("g", "1 mm ±0.05")), MANY));
    }

    /** Closed form: the device lies over the lumen in the corner of a square of sides 0.1 mm, (0.05/0.1)^2/2. */
    @Test
    void shareOfEvenDistributionsHasAClosedForm() {
        assertShare(0.125, in(passage(rodOf("1 mm ±0.05"), guide("g", "1.05 mm ±0.05")), MANY));
    }

    /**
     * Normal parts, cut off far out: Phi(-1) = 0.1587 (standard normal table) for a mean of one standard deviation.
     */
    @Test
    void shareOfNormalPartsIsThatOfTheNormalTable() {
        SampleQuestion question = passage(rodOf("1 mm sd 0.003 n 1000"), guide("g", "1.005 mm sd 0.004 n 1000"))
                .under(TestRules.exact().sampling("0.95", "0.99999"));
        assertShare(0.1587, in(question, MANY));
    }

    @Test
    void noPartOverlapsWhereTheWorstCaseLeavesRoom() {
        SecondOpinion opinion = in(passage(balloon("b", "0.8 mm", "0.6 mm"), guide("g", "1.1 mm"))
                .under(TestRules.usual()), 500);
        assertEquals(0, opinion.overlapping());
        assertTrue(opinion.agrees());
    }

    @Test
    void everyPartOverlapsWhereTheBestCaseDoes() {
        SecondOpinion opinion = in(passage(rodOf("1.2 mm ±0.05"), guide("g", "1 mm ±0.05")), 500);
        assertEquals(500, opinion.overlapping());
        assertTrue(opinion.agrees());
    }

    @Test
    void theSameSeedDrawsTheSameParts() {
        SampleQuestion question = passage(rodOf("1 mm ±0.05"), guide("g", "1.05 mm ±0.05"));
        assertEquals(in(question, 300), in(question, 300));
    }

    @Test
    void comingOutDrawsTheGrowth() {
        SecondOpinion opinion = SecondOpinions.of(passage(balloon("b", "0.8 mm", "0.4 mm"), guide("g", "0.96 mm"))
                .under(TestRules.exact().growth("1.1", "1.2", "1.3")).question(), Phase.OUT, 7, MANY);
        assertShare(0.5, opinion);
    }

    @Test
    void aDeviceThatWasInflatedBeforeIsDrawnGrownOnTheWayIn() {
        assertShare(0.5, in(passage(balloon("b", "0.8 mm", "0.4 mm"), guide("g", "0.96 mm")).afterInflation()
                .under(TestRules.exact().growth("1.1", "1.2", "1.3")), MANY));
    }

    @Test
    void outlinesThatAreNotRoundAreDrawnToo() {
        SampleDevice dual = device("d", DeviceKind.DUAL_LUMEN_MICROCATHETER).length("140 cm").takesWire("0.014 in")
                .oval("shaft", "0 cm", "140 cm", "1.1 mm ±0.02", "0.8 mm ±0.02").sidePort("20 cm", "0.016 in");
        assertTrue(in(passage(dual, guide("g", "1.25 mm ±0.05")), 200).agrees());
        SampleDevice bundle = device("d", DeviceKind.OTHER).length("140 cm").bundle("shaft", "0 cm", "140 cm",
                SampleDevice.member("0 mm", "0 mm", "0.5 mm ±0.02"),
                SampleDevice.member("0.5 mm", "0 mm", "0.4 mm ±0.02"));
        assertTrue(in(passage(bundle, guide("g", "1 mm ±0.05")), 200).agrees());
    }

    @Test
    void noticesLanesThatAreTooHopeful() {
        SampleQuestion question = passage(rodOf("1 mm ±0.05"), guide("g", "1 mm ±0.05"));
        SecondOpinion opinion = opinionOn(question, Verdict.FITS, "0.01 mm");
        assertEquals(Set.of(Difference.OVERLAPS_THOUGH_WORST_LEAVES_ROOM, Difference.ANOTHER_WORST_GAP),
                differences(opinion));
        Contradiction overlap = opinion.contradictions().stream().filter(c -> c.sample() >= 0).findFirst()
                .orElseThrow();
        assertTrue(overlap.gapMm() < 0);
        assertEquals(List.of("g bore 1", "rod shaft"), overlap.drawn().stream().map(d -> d.where()).toList());
    }

    @Test
    void noticesLanesThatAreTooGloomy() {
        SampleQuestion question = passage(rodOf("1 mm ±0.05"), guide("g", "1.01 mm ±0.05"));
        assertEquals(Set.of(Difference.PASSES_THOUGH_BEST_OVERLAPS, Difference.ANOTHER_NOMINAL_VERDICT),
                differences(opinionOn(question, Verdict.BLOCKED, "-0.2 mm")));
    }

    private static SecondOpinion opinionOn(SampleQuestion question, Verdict verdict, String clearance) {
        Clearance everywhere = new Clearance(length(clearance), length(clearance), length(clearance));
        return SecondOpinions.of(question.question(), Phase.IN, new Finding(verdict, Optional.of(everywhere),
                Optional.empty(), Optional.empty(), List.of()), Verdict.FITS, 7, 200);
    }

    private static Set<Difference> differences(SecondOpinion opinion) {
        return opinion.contradictions().stream().map(Contradiction::difference).collect(Collectors.toSet());
    }

    /** Two round devices are a sum: 2.10 mm less 1.00 and 1.00 mm, each up to 0.05 mm more, leave 0.00 at worst. */
    @Test
    void devicesSideBySideAreASum() {
        SecondOpinion opinion = in(passage(rodOf("1 mm ±0.05"), guide("g", "2.1 mm")).beside(rodOf("1 mm ±0.05"),
                "0 mm"), 500);
        assertTrue(opinion.agrees(), opinion::toString);
        assertEquals(0, opinion.overlapping());
        assertEquals(0, opinion.undecided());
    }

    /** Three equal discs of 1 mm need 1 + 2/sqrt(3) = 2.1547 mm (Graham et al., 1998, table of equal discs). */
    @Test
    void threeDevicesNeedTheCircleRoundThem() {
        SampleQuestion narrow = passage(rodOf("1 mm"), guide("g", "2.154 mm")).beside(rodOf("1 mm"), "0 mm")
                .beside(rodOf("1 mm"), "0 mm").under(TestRules.exact());
        SecondOpinion stopped = in(narrow, 10);
        assertEquals(10, stopped.overlapping(), stopped::toString);
        assertTrue(stopped.agrees(), stopped::toString);
        SampleQuestion wide = passage(rodOf("1 mm"), guide("g", "2.155 mm")).beside(rodOf("1 mm"), "0 mm")
                .beside(rodOf("1 mm"), "0 mm").under(TestRules.exact());
        assertEquals(0, in(wide, 10).overlapping());
    }

    @Test
    void whatEndsBeforeTheTightPlaceTakesNoRoomThere() {
        SampleQuestion question = passage(rodOf("1 mm"), guide("g", "1.5 mm")).reach("10 cm");
        assertEquals(10, in(question.beside(rodOf("1 mm"), "0 mm"), 10).overlapping());
        assertEquals(0, in(passage(rodOf("1 mm"), guide("g", "1.5 mm")).reach("10 cm").beside(rodOf("1 mm"),
                "-100 cm"), 10).overlapping());
    }

    @Test
    void noticesHopefulLanesBesideOthers() {
        SampleQuestion question = passage(rodOf("1 mm ±0.05"), guide("g", "2 mm ±0.05")).beside(rodOf("1 mm ±0.05"),
                "0 mm");
        assertEquals(Set.of(Difference.OVERLAPS_THOUGH_WORST_LEAVES_ROOM, Difference.ANOTHER_WORST_GAP),
                differences(opinionOn(question, Verdict.FITS, "0.01 mm")));
    }

    /** 1.2 mm in 1.778 mm at a radius of 20 mm passes up to 9.76 mm (closed form; computed). */
    @Test
    void noticesWhatBendsDoOtherwise() {
        assertEquals(Set.of(Difference.STOPS_IN_BEND_THOUGH_WORST_PASSES), differences(inBend("10 mm", Verdict.FITS)));
        assertEquals(Set.of(Difference.PASSES_BEND_THOUGH_NOMINAL_STOPS),
                differences(inBend("9.5 mm", Verdict.BLOCKED)));
        assertTrue(inBend("9.5 mm", Verdict.FITS).agrees());
        assertTrue(inBend("10 mm", Verdict.BLOCKED).agrees());
    }

    private static SecondOpinion inBend(String rigidLength, Verdict said) {
        SampleDevice burr = device("d", DeviceKind.ROTATIONAL_BURR).length("135 cm")
                .section("burr", "0 mm", rigidLength, "1.2 mm").rigid().section("shaft", rigidLength, "135 cm", "1 mm");
        SampleQuestion question = passage(burr, guide("g", "1.778 mm")).reach("10 cm").bentLumen("20 mm")
                .under(TestRules.exact());
        return SecondOpinions.of(question.question(), Phase.IN,
                new PassageCheck().check(question.question(), Phase.IN), said, 7, 20);
    }

    @Test
    void refusesWhatCannotBeCompared() {
        assertRefused(passage(rodOf("?"), guide("g", "1 mm")));
        assertRefused(passage(rodOf("1 mm"), guide("g", "?")));
        assertRefused(passage(balloon("b", "0.8 mm", "0.6 mm").takesWire("?"), guide("g", "1.778 mm")));
    }

    private static void assertRefused(SampleQuestion question) {
        assertThrows(NotComparableException.class, () -> in(question, 10));
    }

    @Test
    void refusesToDrawNothing() {
        assertThrows(IllegalArgumentException.class, () -> in(passage(rodOf("1 mm"), guide("g", "2 mm")), 0));
    }

    /** Whichever of both figures it is: nobody says what a usual part does. */
    @Test
    void whereACentreIsAssumedNoNominalVerdictIsHeldAgainstTheLanes() {
        for (SampleQuestion question : List.of(passage(rodOf("0.95..1.05 mm"), guide("g", "1.01 mm ±0.05")),
                passage(rodOf("1 mm ±0.05"), guide("g", "0.96..1.06 mm")))) {
            assertEquals(Set.of(Difference.PASSES_THOUGH_BEST_OVERLAPS),
                    differences(opinionOn(question, Verdict.BLOCKED, "-0.2 mm")));
        }
    }
}
