/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.chart.Shelf;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Crossing;
import org.ferrule.escalation.equipment.Filling;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.Suitability;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.plansheet.SamplePlan;
import org.junit.jupiter.api.Test;

/** Verdicts on devices in a plan, long and short. */
class FitWordsTest {
    private final Plan plan = SamplePlan.plan();
    private final FitWords words = SamplePlan.words(plan.ladder()).fits();
    /** A maker's claim says that it fits. */
    private final Suitability stent = plan.delivery().orElseThrow().answer().orElseThrow().ranked().get(0)
            .suitability();
    private final Suitability burr = nearest("burr");
    private final Suitability balloon = plan.rungs().stream().filter(r -> r.move().id().equals("small")).findFirst()
            .orElseThrow().equipment().roles().get(0).chosen().orElseThrow().suitability();
    private final Suitability imaging = plan.bailOut().stream().filter(b -> b.role().id().equals("imaging"))
            .flatMap(b -> b.answer().lacks().stream()).flatMap(FitWordsTest::nearest).findFirst().orElseThrow();

    private Suitability nearest(String technique) {
        return plan.leftOut().stream().filter(l -> l.move().id().equals(technique))
                .flatMap(l -> l.lacks().stream()).flatMap(FitWordsTest::nearest).findFirst().orElseThrow();
    }

    private static Stream<Suitability> nearest(Lack lack) {
        return lack instanceof Lack.DoesNotPass blocked ? Stream.of(blocked.nearest()).map(Candidate::suitability)
                : Stream.empty();
    }

    private static Suitability filling(Suitability passes, Verdict verdict) {
        return new Suitability(passes.crossings(),
                Optional.of(new Filling(Optional.of(mm(2)), Optional.of(mm(1.8)), verdict)));
    }

    @Test
    void whatStandsByPassesNothing() {
        assertEquals("stands by, passes no lumen", words.brief(Suitability.STANDS_BY));
        assertEquals("stands by", words.shortest(Suitability.STANDS_BY));
        assertEquals("", words.against(Suitability.STANDS_BY));
        assertEquals(List.of(), words.explain(Suitability.STANDS_BY));
    }

    @Test
    void clearanceStandsBehindTheVerdict() {
        assertTrue(words.brief(balloon).matches("tight, 0\\.\\d+ mm left at worst"), words.brief(balloon));
        assertTrue(words.shortest(balloon).matches("tight 0\\.\\d+ mm"), words.shortest(balloon));
    }

    @Test
    void anOverlapIsToldAsSuchAndHasAMinusSignInShort() {
        assertEquals(Verdict.BLOCKED, burr.verdict());
        assertTrue(words.brief(burr).matches("blocked, overlap of \\d\\.\\d+ mm at worst"), words.brief(burr));
        assertTrue(words.shortest(burr).matches("blocked [\u2212-]\\d\\.\\d+ mm"), words.shortest(burr));
    }

    @Test
    void whatIsNotKnownHasNoClearanceEvenIfOneWayHas() {
        assertEquals(Verdict.UNKNOWN, imaging.verdict());
        Suitability oneWayKnown = new Suitability(
                Stream.concat(imaging.crossings().stream(), balloon.crossings().stream()).toList(), Optional.empty());
        assertTrue(oneWayKnown.worstClearance().isPresent());
        assertEquals(words.look(imaging).word(), words.brief(oneWayKnown));
        assertEquals(words.look(imaging).word(), words.shortest(oneWayKnown));
    }

    /** The look of a claim only where the claim decides. */
    @Test
    void aMakersWordDecidesNothingAboutALumenThatIsNotFilled() {
        assertEquals(VerdictLook.of(Verdict.FITS, Authority.CLAIM), words.look(stent));
        assertEquals(VerdictLook.of(Verdict.FITS, Authority.CLAIM), words.look(filling(stent, Verdict.FITS)));
        assertEquals(VerdictLook.of(Verdict.BLOCKED, Authority.GEOMETRY), words.look(filling(stent, Verdict.BLOCKED)));
        assertEquals(VerdictLook.of(Verdict.UNKNOWN, Authority.GEOMETRY), words.look(filling(stent, Verdict.UNKNOWN)));
    }

    @Test
    void everyWayIsExplainedAndTheFillingLast() {
        List<String> lines = words.explain(filling(balloon, Verdict.TIGHT));
        assertTrue(lines.get(0).startsWith("through the system: "), lines::toString);
        assertTrue(lines.stream().anyMatch(line -> line.startsWith("over its wire: ")), lines::toString);
        assertEquals("inflated to 2.00 mm it may not fill the lumen of up to 1.80 mm", lines.get(lines.size() - 1));
        long ways = lines.stream().filter(line -> line.matches("(through|over) [a-z ]+: .*")).count();
        assertEquals(balloon.crossings().size(), ways);
        assertTrue(lines.size() > ways + 1, "reasons stand below the ways");
    }

    @Test
    void againstADeviceStandsWhatDecidesAndNothingInItsFavour() {
        assertTrue(words.against(burr).startsWith("over its wire: "), words.against(burr));
        assertEquals("inflated to 2.00 mm it does not fill the lumen of up to 1.80 mm",
                words.against(filling(balloon, Verdict.BLOCKED)));
        assertTrue(words.against(filling(burr, Verdict.FITS)).startsWith("over its wire: "), "it fills the lumen");
        assertTrue(words.against(burr, 1).length() <= words.against(burr, 2).length());
    }

    /** At the collar of an extension a device may catch. */
    @Test
    void aCautionOfSeveralWaysIsToldOnce() {
        FitQuestion question = Shelf.question(Shelf.extension(), Shelf.balloon("b10", "0.70 mm"));
        Crossing crossing = new Crossing(Crossing.Way.SYSTEM, question, Shelf.answer(question));
        List<String> once = words.cautions(new Suitability(List.of(crossing), Optional.empty()));
        assertEquals(1, once.size(), once::toString);
        assertTrue(once.get(0).contains("collar"), once::toString);
        assertEquals(once, words.cautions(new Suitability(List.of(crossing, crossing), Optional.empty())));
        assertEquals(List.of(), words.cautions(balloon));
    }
}
