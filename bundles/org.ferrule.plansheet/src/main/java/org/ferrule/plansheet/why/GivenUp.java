/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.why;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.order.Conventional;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Step;
import org.ferrule.order.Usage;

/**
 * What is given up by taking the steps of a plan in the conventional order of its ladder, as far as the rules allow it:
 * each technique with all its tries before the next, a set-up when it is first needed.
 *
 * @param steps of the plan, in that order
 * @param same whether it is the order of the plan
 * @param loss by how much the expected cost is higher, in the unit of what is spared; below 0 where it is lower, which can
 *        only be where tiers come first, see {@link Conventional#of}
 * @param planned what the plan uses as a mean, from now on
 * @param conventional what the conventional order uses as a mean, from now on
 */
public record GivenUp(List<Step> steps, boolean same, double loss, Costs planned, Costs conventional) {
    private static final double ROUNDING = 1e-12;

    public GivenUp {
        steps = List.copyOf(steps);
        Objects.requireNonNull(planned, "planned");
        Objects.requireNonNull(conventional, "conventional");
    }

    /** Compares a plan that has steps; nothing where the rules allow no such order. */
    static Optional<GivenUp> by(Plan plan) {
        return Conventional.of(plan.problem(), plan.order()).map(order -> new GivenUp(order.steps(),
                order.steps().stream().map(GivenUp::key).toList().equals(
                        plan.order().steps().stream().map(GivenUp::key).toList()),
                loss(plan.order().expectedCost(), order.expectedCost()), mean(plan, plan.order()), mean(plan, order)));
    }

    /** Orders that are equally good differ by the rounding of sums alone. */
    private static double loss(double planned, double conventional) {
        double loss = conventional - planned;
        return Math.abs(loss) <= ROUNDING * planned ? 0 : loss;
    }

    /** Which step it is; its chance may differ with what comes before it. */
    private static String key(Step step) {
        return step.id() + " " + step.attempt();
    }

    private static Costs mean(Plan plan, OrderedPlan order) {
        List<Usage.Line> lines = Usage.of(order, step -> uses(plan, step)).lines();
        List<Double> sums = lines.get(lines.size() - 1).expected();
        return new Costs(sums.get(Resource.TIME.ordinal()), sums.get(Resource.CONTRAST.ordinal()),
                sums.get(Resource.DOSE.ordinal()), sums.get(Resource.MONEY.ordinal()));
    }

    private static List<Double> uses(Plan plan, Step step) {
        Costs costs = plan.rungs().stream().filter(rung -> key(rung.placement().step()).equals(key(step))).findFirst()
                .map(Rung::costs)
                .orElseThrow(() -> new IllegalArgumentException("the plan has no step " + step));
        return Arrays.stream(Resource.values()).map(costs::of).toList();
    }
}
