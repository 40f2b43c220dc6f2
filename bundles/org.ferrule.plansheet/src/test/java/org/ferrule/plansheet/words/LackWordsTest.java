/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.ferrule.chart.DeviceMaker.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.Filling;
import org.ferrule.escalation.equipment.Lack;
import org.ferrule.escalation.equipment.Suitability;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Remedy;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Task;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.quantity.Length;
import org.junit.jupiter.api.Test;

/** Why something cannot be done, and what would help. */
class LackWordsTest {
    private static final LengthRange RANGE = new LengthRange(Optional.of(mm(1.5)), Optional.of(mm(2.5)));
    private static final Role BALLOON = role("small balloon", Selection.ofKinds(Set.of(DeviceKind.BALLOON_CATHETER)));
    private static final Role CONSOLE = role("console", new Selection(Set.of(), Set.of(), LengthRange.ANY,
            LengthRange.ANY, LengthRange.ANY, ShareRange.ANY, Optional.of("laser generator")));

    private final Plan plan = SamplePlan.plan();
    private final LackWords words = SamplePlan.words(plan.ladder()).lacks();
    private final LeftOutWords leftOut = SamplePlan.words(plan.ladder()).leftOut();

    private static Role role(String name, Selection selection) {
        return new Role("role", name, selection, Task.FILL, Carrier.MAIN_WIRE, Goal.IN_GUIDE, 1, false);
    }

    private static Lack filling(Verdict verdict, Optional<Length> diameter) {
        return new Lack.DoesNotPass(BALLOON, new Candidate(Optional.of("b10"), "b10",
                new Suitability(List.of(), Optional.of(new Filling(diameter, Optional.of(mm(1.8)), verdict))),
                new Candidate.Supply(List.of(), 0, 0, List.of())));
    }

    private static Lack missing(String fact) {
        return new Lack.FactMissing(fact, false);
    }

    @Test
    void whatTheShelfLacksIsToldWithTheRoleThatNobodyPlays() {
        assertEquals("small balloon: no usable small balloon on the shelf",
                words.say(new Lack.NotOnShelf(BALLOON, List.of())));
        assertEquals("console: no usable laser generator on the shelf",
                words.say(new Lack.NotOnShelf(CONSOLE, List.of())));
        assertEquals("small balloon: nothing usable on the shelf; Lutra balloon b10 or Lutra balloon b15 would serve",
                words.say(new Lack.NotOnShelf(BALLOON, List.of("b10", "b15"))));
        assertEquals("small balloon: Lutra balloon 1.0 \u00d7 15 expired on 2026-01-31",
                words.say(new Lack.Expired(BALLOON, "sb-10", LocalDate.of(2026, 1, 31))));
        assertEquals("small balloon: earlier steps use up Lutra balloon 1.0 \u00d7 15",
                words.say(new Lack.UsedUp(BALLOON, "sb-10")));
    }

    @Test
    void whatTheCaseLacksIsToldWithoutARole() {
        assertEquals("nobody has stated: Somebody in the room is trained in it", words.say(missing("staff")));
        assertEquals("stated not to hold: Somebody in the room is trained in it",
                words.say(new Lack.FactMissing("staff", true)));
        assertEquals("the side branch is not stated, asked for is 1.5 to 2.5 mm",
                words.say(new Lack.WrongSize(true, RANGE, Optional.empty())));
        assertEquals("the vessel at the lesion of 3 mm, asked for is 1.5 to 2.5 mm",
                words.say(new Lack.WrongSize(false, RANGE, Optional.of(mm(3)))));
        assertEquals("it needs \u201cGuide extension in place\u201d, which cannot be done",
                words.say(new Lack.SetupImpossible("extension")));
    }

    @Test
    void whatDoesNotServeIsToldFromWhatIsNotKnownToServe() {
        assertEquals("small balloon: Lutra balloon b10 does not serve \u2013 "
                + "inflated to 2.00 mm it does not fill the lumen of up to 1.80 mm",
                words.say(filling(Verdict.BLOCKED, Optional.of(mm(2)))));
        assertEquals("small balloon: not known whether Lutra balloon b10 serves \u2013 "
                + "whether it fills the lumen is not known: balloon not stated, lumen 1.80 mm",
                words.say(filling(Verdict.UNKNOWN, Optional.empty())));
        assertEquals("small balloon: it is not stated how far the lesion lies from the tip of the guide",
                words.say(new Lack.NotStated(BALLOON, Lack.Place.REACH)));
    }

    @Test
    void theSameLackTwiceIsToldOnce() {
        assertEquals(List.of(words.say(missing("staff"))), words.say(List.of(missing("staff"), missing("staff"))));
        assertEquals(words.why(missing("staff")), words.why(List.of(missing("staff"), missing("staff"))));
    }

    @Test
    void inBriefTheFirstStandsForAllAndSaysHowManyMoreThereAre() {
        Lack used = new Lack.UsedUp(BALLOON, "sb-10");
        assertEquals("small balloon: earlier steps use up Lutra balloon 1.0 \u00d7 15; 2 more",
                words.brief(List.of(used, missing("staff"), missing("no-ostial"))));
        assertEquals("earlier steps use up Lutra balloon 1.0 \u00d7 15; 1 more",
                words.whyInBrief(List.of(used, missing("staff"))));
        assertEquals(words.say(used), words.brief(List.of(used)));
    }

    @Test
    void inBriefWhatIsLongerThanALineEndsWithAWord() {
        String all = words.why(missing("word ".repeat(30).strip()));
        String brief = words.brief(List.of(missing("word ".repeat(30).strip())));
        assertTrue(brief.endsWith("word \u2026") && brief.length() <= 132, brief);
        assertTrue(all.startsWith(brief.substring(0, brief.length() - 2)) && brief.length() > 125, brief);
        String line = "x".repeat(130 - words.why(missing("")).length());
        assertEquals(words.why(missing(line)), words.brief(List.of(missing(line))), "a line that is just full");
    }

    @Test
    void whatWouldHelpIsToldAsSomethingToDo() {
        assertEquals("if it holds, state: Somebody in the room is trained in it",
                leftOut.remedy(new Remedy.State("staff")));
        assertEquals("take out the second wire; then Lutra balloon b10 passes",
                leftOut.remedy(new Remedy.TakeOut(Slot.SECOND_WIRE, "b10")));
        assertEquals("exchange the guide for Halden guide 7 Fr, which is on the shelf; then Lutra balloon b10 passes",
                leftOut.remedy(new Remedy.ExchangeGuide("guide-7", true, "b10")));
        assertEquals(
                "exchange the guide for Halden guide 7 Fr, which is not on the shelf; then Lutra balloon b10 passes",
                leftOut.remedy(new Remedy.ExchangeGuide("guide-7", false, "b10")));
    }

    @Test
    void whatIsLeftOutTellsItsLacksOrElseItsKindOfReason() {
        LeftOut failed = new LeftOut(plan.ladder().techniques().get(1), LeftOut.Why.FAILED, List.of(), List.of());
        assertEquals("Small balloon", leftOut.name(failed));
        assertEquals("was tried and failed", leftOut.why(failed));
        assertEquals("was tried and failed", leftOut.brief(failed));
        LeftOut lacking = new LeftOut(failed.move(), LeftOut.Why.IMPOSSIBLE,
                List.of(missing("staff"), missing("no-ostial")), List.of());
        assertEquals(words.say(missing("staff")) + "; " + words.say(missing("no-ostial")), leftOut.why(lacking));
        assertEquals(words.say(missing("staff")) + "; 1 more", leftOut.brief(lacking));
    }
}
