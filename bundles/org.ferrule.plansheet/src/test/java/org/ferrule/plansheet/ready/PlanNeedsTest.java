/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.ready;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.ferrule.escalation.equipment.Stock;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.shelf.ready.CasesAnswer;
import org.ferrule.shelf.ready.Contention;
import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.ready.NeedAnswer;
import org.ferrule.shelf.ready.PlannedCase;
import org.ferrule.shelf.ready.Readiness;
import org.ferrule.shelf.ready.ReadinessCheck;
import org.ferrule.shelf.ready.Reason;
import org.ferrule.shelf.ready.ReasonCode;
import org.junit.jupiter.api.Test;

class PlanNeedsTest {
    private final Plan plan = SamplePlan.plan();
    private final ReadyWords words = new ReadyWords();

    private PlannedCase planned(String id) {
        return PlanNeeds.of(id, plan, new Stock(SamplePlan.shelf(4), Map.of()),
                SamplePlan.words(plan.ladder()).names());
    }

    @Test
    void everyUnitThatThePlanTakesIsANeed() {
        int taken = plan.rungs().stream().flatMap(rung -> rung.taken().stream()).mapToInt(pick -> pick.count()).sum();
        assertEquals(taken, planned("one").needs().stream().mapToInt(Need::count).sum());
        assertEquals("Small balloon: small balloon", planned("one").needs().get(0).id());
        assertEquals(List.of("sb-10"), planned("one").needs().get(0).preferredItems());
    }

    @Test
    void theShelfThatWasPlannedWithCoversThePlan() {
        CasesAnswer answer = ReadinessCheck.ofCases(SamplePlan.shelf(4), List.of(planned("one")));
        assertTrue(answer.cases().get(0).readiness().isCovered(), answer::toString);
    }

    @Test
    void aSecondCaseOfTheSameDayFindsWhatTheFirstLeaves() {
        CasesAnswer answer = ReadinessCheck.ofCases(SamplePlan.shelf(4), List.of(planned("one"), planned("two")));
        assertFalse(answer.cases().get(1).readiness().isCovered());
        Contention extension = answer.contentions().stream().filter(c -> c.item().equals("ext")).findFirst()
                .orElseThrow();
        assertEquals("ext: taken for one, Guide extension in place: guide extension; then not left for two, "
                + "Guide extension in place: guide extension", words.say(extension));
    }

    @Test
    void everyDegreeAndEveryReasonHasWords() {
        assertEquals(Readiness.values().length,
                Arrays.stream(Readiness.values()).map(words::say).collect(Collectors.toSet()).size());
        for (ReasonCode code : ReasonCode.values()) {
            String said = words.say(new Reason(code, List.of("item", "lot", "2026-01-31", "4")));
            assertFalse(said.isBlank() || said.contains("{"), said);
        }
        NeedAnswer answer = new NeedAnswer(new Need("wire", 1, List.of("w"), List.of()), Readiness.MISSING, List.of(),
                List.of(new Reason(ReasonCode.NOT_ENOUGH, List.of("0", "1"))));
        assertEquals("wire \u2013 missing (0 may be used, 1 needed)", words.say(answer));
    }
}
