/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import static org.ferrule.shelf.stock.Stock.CASE;
import static org.ferrule.shelf.stock.Stock.item;
import static org.ferrule.shelf.stock.Stock.lot;
import static org.ferrule.shelf.stock.Stock.shelf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

import org.ferrule.shelf.ready.Contention.Claim;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.shelf.stock.Shelf;
import org.junit.jupiter.api.Test;

class ReadinessCheckTest {
    private final Shelf shelf = shelf(item("b", lot("B1", "2027-06-01", 2), lot("B2", "2027-03-15", 1)),
            item("c", lot("C1", "2027-03-14", 2)), item("d", lot("D1", "", 1)), item("e"));

    private static Need need(int count, String... preferred) {
        return new Need("n", count, List.of(preferred), List.of());
    }

    private static Need orElse(Need need, String... substitutes) {
        return new Need(need.id(), need.count(), need.preferredItems(), List.of(substitutes));
    }

    private static Need named(String id, Need need) {
        return new Need(id, need.count(), need.preferredItems(), need.substituteItems());
    }

    private static Reason reason(ReasonCode code, String... arguments) {
        return new Reason(code, List.of(arguments));
    }

    private void assertAnswer(Readiness readiness, Need need, Reason... reasons) {
        NeedAnswer answer = ReadinessCheck.of(shelf, need, CASE);
        assertEquals(readiness, answer.readiness());
        assertEquals(Arrays.asList(reasons), answer.reasons());
        assertEquals(need, answer.need());
    }

    @Test
    void readyIsWhatIsThereWithMoreBehindIt() {
        assertAnswer(Readiness.READY, need(1, "b"), reason(ReasonCode.EXPIRES_THAT_DAY, "b", "B2", "2027-03-15"));
        assertAnswer(Readiness.READY, need(3, "b", "d"), reason(ReasonCode.EXPIRES_THAT_DAY, "b", "B2", "2027-03-15"));
        assertEquals(
                List.of(new Pick("b", lot("B2", "2027-03-15", 1), 1), new Pick("b", lot("B1", "2027-06-01", 2), 1)),
                ReadinessCheck.of(shelf, need(2, "b"), CASE).picks());
    }

    @Test
    void lastOneIsWhatIsThereWithNothingBehindIt() {
        assertAnswer(Readiness.LAST_ONE, need(3, "b"), reason(ReasonCode.LAST_UNITS),
                reason(ReasonCode.EXPIRES_THAT_DAY, "b", "B2", "2027-03-15"));
        assertAnswer(Readiness.LAST_ONE, need(1, "d"), reason(ReasonCode.LAST_UNITS),
                reason(ReasonCode.NO_EXPIRY, "d", "D1"));
        assertAnswer(Readiness.LAST_ONE, orElse(need(1, "d"), "b"), reason(ReasonCode.NO_EXPIRY, "d", "D1"));
    }

    @Test
    void substituteIsASecondChoice() {
        assertAnswer(Readiness.SUBSTITUTE, orElse(need(1, "c"), "b"),
                reason(ReasonCode.EXPIRES_BEFORE, "c", "C1", "2027-03-14", "2"),
                reason(ReasonCode.SECOND_CHOICE, "b", "1"),
                reason(ReasonCode.EXPIRES_THAT_DAY, "b", "B2", "2027-03-15"));
        assertAnswer(Readiness.SUBSTITUTE, orElse(need(1, "x"), "d"), reason(ReasonCode.NOT_ON_SHELF, "x"),
                reason(ReasonCode.SECOND_CHOICE, "d", "1"), reason(ReasonCode.LAST_UNITS),
                reason(ReasonCode.NO_EXPIRY, "d", "D1"));
    }

    @Test
    void expiredIsWhatWouldBeEnoughOnAnEarlierDay() {
        assertAnswer(Readiness.EXPIRED, need(2, "c"), reason(ReasonCode.NOT_ENOUGH, "0", "2"),
                reason(ReasonCode.EXPIRES_BEFORE, "c", "C1", "2027-03-14", "2"));
        assertAnswer(Readiness.EXPIRED, orElse(need(2, "d"), "c"), reason(ReasonCode.NOT_ENOUGH, "1", "2"),
                reason(ReasonCode.EXPIRES_BEFORE, "c", "C1", "2027-03-14", "2"),
                reason(ReasonCode.NO_EXPIRY, "d", "D1"));
        assertEquals(Readiness.LAST_ONE, ReadinessCheck.of(shelf, need(2, "c"), CASE.minusDays(1)).readiness());
    }

    @Test
    void missingIsWhatIsNotThereAtAll() {
        assertAnswer(Readiness.MISSING, need(1, "e"), reason(ReasonCode.NOT_ENOUGH, "0", "1"));
        assertAnswer(Readiness.MISSING, orElse(need(1, "e"), "x"), reason(ReasonCode.NOT_ENOUGH, "0", "1"),
                reason(ReasonCode.NOT_ON_SHELF, "x"));
        assertAnswer(Readiness.MISSING, need(3, "c"), reason(ReasonCode.NOT_ENOUGH, "0", "3"),
                reason(ReasonCode.EXPIRES_BEFORE, "c", "C1", "2027-03-14", "2"));
        assertAnswer(Readiness.MISSING, need(1), reason(ReasonCode.NO_ITEM), reason(ReasonCode.NOT_ENOUGH, "0", "1"));
    }

    @Test
    void earlierNeedsUseUpStockEvenWhereItDoesNotSuffice() {
        List<NeedAnswer> answers = ReadinessCheck.inOrder(shelf, List.of(named("first", need(2, "d")),
                named("second", need(1, "d"))), CASE);
        assertEquals(Readiness.MISSING, answers.get(0).readiness());
        assertEquals(1, answers.get(0).picked());
        assertEquals(Readiness.MISSING, answers.get(1).readiness());
        assertEquals(List.of(reason(ReasonCode.NOT_ENOUGH, "0", "1"),
                reason(ReasonCode.TAKEN_EARLIER, "d", "1", "", "first")), answers.get(1).reasons());
    }

    @Test
    void takesItemsInTheOrderInWhichTheyAreNamed() {
        assertEquals(List.of("d", "b"), ReadinessCheck.of(shelf, orElse(need(2, "e", "d"), "b"), CASE).picks().stream()
                .map(Pick::item).toList());
    }

    @Test
    void earlierCasesAreServedFirstWhateverTheirOrder() {
        PlannedCase late = new PlannedCase("late", CASE.plusDays(1), List.of(need(1, "d")));
        PlannedCase early = new PlannedCase("early", CASE, List.of(need(1, "d")));
        CasesAnswer answer = ReadinessCheck.ofCases(shelf, List.of(late, early));
        assertEquals(List.of("late", "early"), answer.cases().stream().map(c -> c.plannedCase().id()).toList());
        assertEquals(List.of(Readiness.MISSING, Readiness.LAST_ONE),
                answer.cases().stream().map(CaseAnswer::readiness).toList());
        assertEquals(List.of(new Contention("d", 1, List.of(new Claim("early", "n")), List.of(new Claim("late", "n")))),
                answer.contentions());
        assertEquals(0, answer.left().item("d").orElseThrow().quantity());
    }

    @Test
    void saysNothingOfUnitsThatWouldHaveExpired() {
        PlannedCase early = new PlannedCase("early", LocalDate.of(2027, 3, 1), List.of(need(2, "c")));
        PlannedCase late = new PlannedCase("late", CASE, List.of(need(1, "c")));
        CasesAnswer answer = ReadinessCheck.ofCases(shelf, List.of(early, late));
        assertEquals(Readiness.MISSING, answer.cases().get(1).readiness());
        assertEquals(List.of(), answer.contentions());
    }

    @Test
    void unitThatTwoCasesWantIsToldWhereASubstituteHelps() {
        PlannedCase one = new PlannedCase("one", CASE, List.of(need(1, "d"), named("m", need(1, "e"))));
        PlannedCase two = new PlannedCase("two", CASE, List.of(orElse(need(1, "d"), "b")));
        PlannedCase three = new PlannedCase("three", CASE, List.of());
        CasesAnswer answer = ReadinessCheck.ofCases(shelf, List.of(one, two, three));
        assertEquals(List.of(Readiness.MISSING, Readiness.SUBSTITUTE, Readiness.READY),
                answer.cases().stream().map(CaseAnswer::readiness).toList());
        assertEquals(List.of(new Contention("d", 1, List.of(new Claim("one", "n")), List.of(new Claim("two", "n")))),
                answer.contentions());
        assertEquals(List.of(reason(ReasonCode.TAKEN_EARLIER, "d", "1", "one", "n"),
                reason(ReasonCode.SECOND_CHOICE, "b", "1"),
                reason(ReasonCode.EXPIRES_THAT_DAY, "b", "B2", "2027-03-15")),
                answer.cases().get(1).needs().get(0).reasons());
    }

    @Test
    void whereASubstituteCoversTheNeedOnlyWhatIsPreferredCountsAsTaken() {
        List<NeedAnswer> answers = ReadinessCheck.inOrder(shelf, List.of(named("p", need(1, "d")),
                named("q", need(1, "b")), named("r", orElse(need(1, "d"), "b"))), CASE);
        assertEquals(List.of(reason(ReasonCode.TAKEN_EARLIER, "d", "1", "", "p"),
                reason(ReasonCode.SECOND_CHOICE, "b", "1")), answers.get(2).reasons());
    }

    @Test
    void whereSubstitutesDoNotSufficeWhatWasTakenOfThemIsToldToo() {
        List<NeedAnswer> answers = ReadinessCheck.inOrder(shelf, List.of(named("p", need(1, "b")),
                named("q", orElse(need(3, "e"), "b"))), CASE);
        assertEquals(List.of(reason(ReasonCode.NOT_ENOUGH, "2", "3"),
                reason(ReasonCode.TAKEN_EARLIER, "b", "1", "", "p"), reason(ReasonCode.SECOND_CHOICE, "b", "2")),
                answers.get(1).reasons());
    }

    @Test
    void saysNothingOfASubstitutesOldUnitsWhereItCoversTheNeed() {
        Shelf stock = shelf(item("e"), item("f", lot("F1", "2027-01-31", 1), lot("F2", "2028-01-31", 3)));
        assertEquals(List.of(reason(ReasonCode.SECOND_CHOICE, "f", "1")),
                ReadinessCheck.of(stock, orElse(need(1, "e"), "f"), CASE).reasons());
    }

    @Test
    void needThatLosesTwiceIsToldOnce() {
        List<Need> needs = List.of(named("p", need(1, "b")), named("q", need(2, "b")), named("r", need(1, "b")));
        CasesAnswer answer = ReadinessCheck.ofCases(shelf, List.of(new PlannedCase("one", CASE, needs)));
        assertEquals(List.of(new Contention("b", 3, List.of(new Claim("one", "p"), new Claim("one", "q")),
                List.of(new Claim("one", "r")))), answer.contentions());
    }

    @Test
    void coveredIsAllUpToSubstitute() {
        assertTrue(Readiness.SUBSTITUTE.isCovered());
        assertFalse(Readiness.EXPIRED.isCovered());
    }

    @Test
    void refusesWhatContradictsItself() {
        assertThrows(IllegalArgumentException.class, () -> need(0, "b"));
        assertThrows(IllegalArgumentException.class, () -> need(1, "b", "b"));
        assertThrows(IllegalArgumentException.class, () -> orElse(need(1, "b"), "b"));
        PlannedCase planned = new PlannedCase("one", CASE, List.of());
        assertThrows(IllegalArgumentException.class, () -> ReadinessCheck.ofCases(shelf, List.of(planned, planned)));
    }
}
