/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Costs;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.order.Input;
import org.ferrule.order.Input.Kind;
import org.ferrule.order.InputRange;
import org.ferrule.order.Step;
import org.ferrule.plansheet.why.GivenUp;
import org.ferrule.plansheet.why.OrderReasons;

/** What the order of a plan hangs on: how far its figures may move, and what the conventional order gives up. */
public final class WhyWords {
    private static final int NEAREST = 3;

    private final Phrases phrases;
    private final PlanNames names;
    private final Amounts amounts;

    WhyWords(Phrases phrases, PlanNames names, Amounts amounts) {
        this.phrases = phrases;
        this.names = names;
        this.amounts = amounts;
    }

    /** How far the figures of a step may move before the order changes. */
    public String step(Rung rung, OrderReasons reasons, Plan plan) {
        return phrases.fill("why.step", reasons.of(rung).stream()
                .map(range -> phrases.fill("why." + range.input().kind(), within(range, plan)))
                .collect(Collectors.joining(phrases.get("why.and"))));
    }

    /** The whole order: with what it changes first, the cost of stopping, the conventional order, and what is meant. */
    public List<String> order(OrderReasons reasons, Plan plan) {
        List<String> lines = new ArrayList<>();
        nearest(reasons, plan).ifPresent(lines::add);
        reasons.stopping().map(range -> phrases.fill("why.stopping", within(range, plan))).ifPresent(lines::add);
        if (!plan.rungs().isEmpty()) {
            lines.add(conventional(reasons, plan));
            lines.add(phrases.get(reasons.ranges().stream().allMatch(InputRange::exact) ? "why.meant"
                    : "why.meant.halved"));
        }
        return List.copyOf(lines);
    }

    /** The same in short: what changes it first, and what the conventional order gives up. */
    public List<String> brief(OrderReasons reasons, Plan plan) {
        List<String> lines = new ArrayList<>();
        nearest(reasons, plan).ifPresent(lines::add);
        if (!plan.rungs().isEmpty()) {
            lines.add(conventional(reasons, plan));
        }
        return List.copyOf(lines);
    }

    private Optional<String> nearest(OrderReasons reasons, Plan plan) {
        List<InputRange> nearest = reasons.nearest(NEAREST);
        return nearest.isEmpty() ? Optional.empty() : Optional.of(phrases.fill("why.nearest", nearest.stream()
                .map(range -> phrases.fill("why.input", name(range.input()), value(range, plan), within(range, plan)))
                .collect(Collectors.joining("; "))));
    }

    /** What a figure is called, such as "chance of Small balloon, try 2". */
    public String name(Input input) {
        if (input.kind() == Kind.STOPPING_COST) {
            return phrases.get("why.name.STOPPING_COST");
        }
        return phrases.fill("why.name." + input.kind(), names.move(input.id()), Integer.toString(input.attempt()));
    }

    private String value(InputRange range, Plan plan) {
        return range.input().kind() == Kind.TRY_CHANCE ? Amounts.share(range.value())
                : amounts.compared(plan.file().aim().objective(), range.value());
    }

    /** Between which figures nothing changes, rounded inward. */
    private String within(InputRange range, Plan plan) {
        String low = range.low().isPresent() ? bound(range, range.low().getAsDouble(), plan) : "";
        String high = range.high().isPresent() ? bound(range, range.high().getAsDouble(), plan) : "";
        if (low.isEmpty() && high.isEmpty()) {
            return phrases.get("why.whatever");
        }
        if (low.isEmpty()) {
            return phrases.fill("why.atMost", high);
        }
        return high.isEmpty() ? phrases.fill("why.atLeast", low) : phrases.fill("why.between", low, high);
    }

    private String bound(InputRange range, double bound, Plan plan) {
        String number = Amounts.inward(bound, range.value());
        return range.input().kind() == Kind.TRY_CHANCE ? number
                : phrases.fill("amount", number, amounts.unit(plan.file().aim().objective()));
    }

    private String conventional(OrderReasons reasons, Plan plan) {
        Optional<GivenUp> conventional = reasons.conventional();
        if (conventional.isEmpty()) {
            return phrases.get("why.conventional.none");
        }
        GivenUp givenUp = conventional.get();
        if (givenUp.same()) {
            return phrases.get("why.conventional.same");
        }
        Resource objective = plan.file().aim().objective();
        String key = givenUp.loss() < 0 ? "why.conventional.less" : "why.conventional";
        return phrases.fill(key, amounts.compared(objective, Math.abs(givenUp.loss())),
                sums(givenUp.conventional()), sums(givenUp.planned()), sequence(givenUp, plan));
    }

    private String sums(Costs costs) {
        return amounts.all(costs);
    }

    /** The numbers that the steps have in the plan, in the conventional order. */
    private static String sequence(GivenUp givenUp, Plan plan) {
        return givenUp.steps().stream().map(step -> Integer.toString(number(step, plan)))
                .collect(Collectors.joining(", "));
    }

    private static int number(Step step, Plan plan) {
        return plan.rungs().stream().filter(rung -> rung.move().id().equals(step.id())
                && rung.placement().step().attempt() == step.attempt()).findFirst().orElseThrow().number();
    }
}
