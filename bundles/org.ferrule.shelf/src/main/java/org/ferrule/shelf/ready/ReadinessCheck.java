/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.shelf.ready;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.ferrule.shelf.stock.Shelf;

/**
 * Asks a shelf for what is needed.
 * <p>
 * Needs are served one after another, each with its items in their order and the units of an item first expired first
 * out. Nothing is rearranged for the sake of a later need, and a need that cannot be covered keeps what there is of it:
 * so a box less on the shelf can never make a need ready, and a box more never spoil one.
 */
public final class ReadinessCheck {

    private ReadinessCheck() {
    }

    /**
     * Answers one need.
     *
     * @param shelf what is there
     * @param need what is needed
     * @param date the day of the case; what expires before it does not count
     */
    public static NeedAnswer of(Shelf shelf, Need need, LocalDate date) {
        return inOrder(shelf, List.of(need), date).get(0);
    }

    /**
     * Answers needs of one day; those named first use up stock.
     *
     * @param shelf what is there
     * @param needs needs in their order
     * @param date the day of the case
     */
    public static List<NeedAnswer> inOrder(Shelf shelf, List<Need> needs, LocalDate date) {
        return ofCases(shelf, List.of(new PlannedCase("", date, needs))).cases().get(0).needs();
    }

    /**
     * Answers cases that share a shelf. Cases are served by their dates, those of one day in their order.
     *
     * @param shelf what is there
     * @param cases the cases, each id once
     * @throws IllegalArgumentException naming an id that two cases have
     */
    public static CasesAnswer ofCases(Shelf shelf, List<PlannedCase> cases) {
        Ledger ledger = new Ledger(shelf);
        Map<String, CaseAnswer> answers = new HashMap<>();
        List<PlannedCase> byDate = new ArrayList<>(cases);
        byDate.sort(Comparator.comparing(PlannedCase::date));
        for (PlannedCase planned : byDate) {
            List<NeedAnswer> needs = planned.needs().stream().map(need -> ledger.serve(planned, need)).toList();
            if (answers.put(planned.id(), new CaseAnswer(planned, needs)) != null) {
                throw new IllegalArgumentException("two cases \"" + planned.id() + "\"");
            }
        }
        return new CasesAnswer(cases.stream().map(planned -> answers.get(planned.id())).toList(),
                ledger.contentions(), ledger.left());
    }
}
