/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts and how a plan stands to their limits. */
class BudgetWordsTest {
    private final Plan plan = SamplePlan.plan();
    private final BudgetWords words = SamplePlan.words(plan.ladder()).budgets();

    private static Budget time(double used, double expected, double worst, OptionalDouble limit, OptionalInt beyond) {
        return new Budget(Resource.TIME, used, expected, worst, limit, beyond);
    }

    private static Budget time(double used, double limit) {
        return time(used, 32, 74, OptionalDouble.of(limit), OptionalInt.empty());
    }

    @Test
    void sumsTellWhatIsUsedWhatIsExpectedTheWorstAndTheLimit() {
        assertEquals("10 used, 32 expected, 74 if every step is taken, of 90 min", words.sums(time(10, 90)));
        assertEquals("32 expected, 74 if every step is taken, of 90 min", words.sums(time(0, 90)));
        assertEquals("10 used, 32 expected, 74 if every step is taken, no limit in min set",
                words.sums(time(10, 32, 74, OptionalDouble.empty(), OptionalInt.empty())));
    }

    @Test
    void whereNothingIsLeftToTakeNothingIsExpected() {
        assertEquals("74 used, of 90 min", words.sums(time(74, 74, 74, OptionalDouble.of(90), OptionalInt.empty())));
    }

    @Test
    void limitIsReachedBeyondItsStepOrWithin() {
        assertEquals("limit reached", words.beyond(time(90, 90)));
        assertEquals("within the limit", words.beyond(time(89.9, 90)));
        assertEquals("beyond the limit from step 4 on, if every step is taken",
                words.beyond(time(10, 32, 99, OptionalDouble.of(90), OptionalInt.of(4))));
        assertEquals("", words.beyond(time(10, 32, 74, OptionalDouble.empty(), OptionalInt.empty())));
        assertFalse(time(10, 32, 74, OptionalDouble.empty(), OptionalInt.empty()).isUsedUp());
    }

    @Test
    void aResourceIsThereIfItHasALimitOrIsUsed() {
        assertEquals(List.of(Resource.values()), Budget.of(plan).stream().map(Budget::resource).toList());
        Plan none = SamplePlan.plan(Map.of("true-lumen", false));
        assertEquals(List.of(4.0, 20.0, 150.0, 0.0), Budget.of(none).stream().map(Budget::used).toList());
        assertEquals(List.of(4.0, 20.0, 150.0, 0.0), Budget.of(none).stream().map(Budget::worst).toList());
    }

    @ParameterizedTest
    @CsvSource({ "0, 0", "12.31, 12.4", "99.9, 99.9", "99.91, 100", "100, 100", "100.01, 101", "0.05, 0.1" })
    void whatIsUsedIsRoundedUpToATenthAndFromAHundredOnToWholeOnes(double amount, String number) {
        assertEquals(number, words.amounts().number(amount));
    }

    @ParameterizedTest
    @CsvSource({ "12.34, 12 min", "0.1234, 0.12 min", "99.4, 99 min", "100.4, 100 min", "1234, 1234 min" })
    void whatOnlyComparesHasTwoDigitsAndFromAHundredOnWholeOnes(double amount, String said) {
        assertEquals(said, words.amounts().compared(Resource.TIME, amount));
    }

    @Test
    void whatAStepUsesIsToldWithoutWhatItDoesNot() {
        assertEquals("5 min, 310 EUR", words.amounts().all(new Costs(5, 0, 0, 310)));
        assertEquals("", words.amounts().all(Costs.NONE));
    }

    @Test
    void moneyOfAnUnknownCurrencySaysSo() {
        Amounts unknown = PlanWords.english(plan.ladder(), SamplePlan.instruments(),
                SamplePlan.shelf(1), UnitPreferences.in(LengthUnit.MILLIMETRE), " ").budgets().amounts();
        assertEquals("310 (currency not stated)", unknown.used(Resource.MONEY, 310));
        assertEquals("5 min", unknown.used(Resource.TIME, 5));
    }

    /** Whatever is between the bound that is told and the figure keeps the order, so it lies between the true two. */
    @ParameterizedTest
    @CsvSource({ "0.341, 0.444, 0.35", "0.519, 0.444, 0.51", "0.4428, 0.4435, 0.443", "0.4442, 0.4435, 0.444",
        "0.44349999, 0.4435, 0.4435", "5, 4, 5" })
    void boundIsToldInwardWithAsFewDigitsAsKeepItOnItsSide(double bound, double figure, String said) {
        assertEquals(said, Amounts.inward(bound, figure));
        double told = Double.parseDouble(said);
        assertTrue(Math.min(bound, figure) <= told && told <= Math.max(bound, figure), said);
    }
}
