/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import static java.math.RoundingMode.CEILING;
import static java.math.RoundingMode.FLOOR;
import static java.math.RoundingMode.HALF_EVEN;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.input.Kinds;
import org.ferrule.calc.input.Limits;
import org.ferrule.calc.input.Parameter;
import org.ferrule.calc.input.Parameter.Occurrence;
import org.ferrule.calc.result.Calculation;
import org.ferrule.calc.result.Detail;
import org.ferrule.calc.result.Rounded;
import org.ferrule.order.Conventional;
import org.ferrule.order.Option;
import org.ferrule.order.OrderException;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.OrderRules;
import org.ferrule.order.OrderedPlan;
import org.ferrule.order.Orders;
import org.ferrule.order.Placement;
import org.ferrule.order.Try;

/** The order of independent options that costs least until one succeeds. */
final class OrderCalculator extends WordedCalculator {
    private final Parameter<List<Try>> option = parameter("option", Kinds.TRIES, Occurrence.MAIN_REPEATED, Limits.NONE);
    private final Parameter<BigDecimal> stop = parameter("stop", Kinds.numberIn(""), Occurrence.OPTIONAL,
            Limits.from("0"));

    OrderCalculator() {
        super("order");
    }

    @Override
    public Calculation calculate(Arguments arguments) {
        Optional<BigDecimal> stopping = arguments.find(stop);
        OrderProblem problem = problem(arguments.all(option), stopping);
        OrderedPlan plan = Orders.solve(problem);
        double cost = stopping.isPresent() ? plan.expectedCost() : plan.stepsCost();
        double given = Conventional.of(problem, plan).orElse(plan).expectedCost();
        return answer(stopping.isPresent() ? "stop" : "all", Rounded.digits(cost, HALF_EVEN), "1").with(
                Detail.numbers("order", plan.steps().stream().map(step -> new BigDecimal(step.id())).toList()),
                Detail.numbers("index", plan.placements().stream().map(OrderCalculator::index).toList()),
                Detail.of("success", Rounded.digits(plan.successChance(), FLOOR)),
                Detail.of("worst", Rounded.digits(plan.worstCost(), CEILING)),
                Detail.of("asGiven", Rounded.digits(cost + given - plan.expectedCost(), HALF_EVEN)));
    }

    private static BigDecimal index(Placement placement) {
        return Rounded.digits(placement.index(), HALF_EVEN);
    }

    private OrderProblem problem(List<List<Try>> tries, Optional<BigDecimal> stopping) {
        List<Option> options = new ArrayList<>();
        for (List<Try> each : tries) {
            String id = String.valueOf(options.size() + 1);
            try {
                options.add(new Option(id, each, Set.of(), Set.of(), 0, "", false));
            } catch (OrderException rising) {
                throw ArgumentException.of(option.name(), rising.getMessage());
            }
        }
        double cost = stopping.map(BigDecimal::doubleValue).orElseGet(() -> aboveAnyIndex(tries));
        try {
            return new OrderProblem(List.of(), options, cost, OrderRules.NONE);
        } catch (OrderException tooMany) {
            throw ArgumentException.of(option.name(), tooMany.getMessage());
        }
    }

    /** A cost of stopping that makes everything worth it that can succeed. */
    private static double aboveAnyIndex(List<List<Try>> tries) {
        double cost = 0;
        double chance = 1;
        for (Try each : tries.stream().flatMap(List::stream).toList()) {
            cost += each.cost();
            chance = each.chance() > 0 ? Math.min(chance, each.chance()) : chance;
        }
        return 2 * (cost + 1) / chance;
    }
}
