/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.order.Input;
import org.ferrule.order.Input.Kind;
import org.ferrule.order.InputRange;
import org.ferrule.plansheet.SamplePlan;
import org.ferrule.plansheet.why.GivenUp;
import org.ferrule.plansheet.why.OrderReasons;
import org.junit.jupiter.api.Test;

class WhyWordsTest {
    private final Plan plan = SamplePlan.plan();
    private final WhyWords words = SamplePlan.words(plan.ladder()).why();
    private final Rung small = plan.rungs().stream().filter(rung -> rung.move().id().equals("small")).findFirst()
            .orElseThrow();

    private static InputRange range(Kind kind, double low, double value, double high) {
        return new InputRange(new Input(kind, "small", 1), value, finite(low), finite(high), true);
    }

    private static OptionalDouble finite(double end) {
        return Double.isNaN(end) ? OptionalDouble.empty() : OptionalDouble.of(end);
    }

    private String step(InputRange... ranges) {
        return words.step(small, new OrderReasons(List.of(ranges), Optional.empty()), plan);
    }

    @Test
    void endsAreRoundedInward() {
        assertEquals("the order stays with a chance of 0.35 to 0.51 and with a cost of 4.1 min to 5.9 min",
                step(range(Kind.TRY_CHANCE, 0.341, 4 / 9.0, 0.519), range(Kind.TRY_COST, 4.01, 5, 5.99)));
    }

    @Test
    void anEndBesideTheFigureHasAsManyDigitsAsItNeeds() {
        assertEquals("the order stays with a chance of 0.443 or more", step(range(Kind.TRY_CHANCE, 0.4428, 0.4435,
                Double.NaN)));
    }

    @Test
    void whatNeverChangesTheOrderIsSaidToo() {
        assertEquals("the order stays with a cost of any size",
                step(range(Kind.TRY_COST, Double.NaN, 5, Double.NaN)));
        assertEquals("the order stays with a cost of 6 min or less",
                step(range(Kind.TRY_COST, Double.NaN, 5, 6)));
    }

    @Test
    void theOrderTellsWhatChangesItAndWhatTheConventionalOneGivesUp() {
        OrderReasons reasons = OrderReasons.of(plan);
        List<String> lines = words.order(reasons, plan);
        assertTrue(lines.get(0).startsWith("It changes first with the "), lines::toString);
        assertTrue(lines.get(1).matches("The order stays as long as ending without success counts as .*min.*"),
                lines::toString);
        assertTrue(
                lines.get(2).matches("The same steps in the conventional order \\(numbered as here: [\\d, ]+\\) cost "
                        + ".* more on average: .* instead of .*"),
                lines::toString);
        assertEquals(words.brief(reasons, plan), List.of(lines.get(0), lines.get(2)));
        lines.forEach(line -> assertFalse(line.contains("{"), line));
    }

    /** Where each tier is planned for itself. */
    @Test
    void aConventionalOrderThatCostsLessIsSaidToDoSo() {
        GivenUp found = OrderReasons.of(plan).conventional().orElseThrow();
        GivenUp less = new GivenUp(found.steps(), false, -3, found.planned(), found.conventional());
        List<String> lines = words.brief(new OrderReasons(List.of(), Optional.of(less)), plan);
        String line = lines.get(lines.size() - 1);
        assertTrue(line.contains("would cost 3 min less on average"), line);
        assertTrue(line.endsWith("since here each tier is planned for itself, whatever that leaves to the next"), line);
    }

    @Test
    void everyFigureHasAName() {
        Input.of(plan.problem()).forEach(input -> assertFalse(words.name(input).contains("{"), words.name(input)));
        assertEquals("the chance of \u201cSmall balloon\u201d, try 1",
                words.name(new Input(Kind.TRY_CHANCE, "small", 1)));
    }
}
