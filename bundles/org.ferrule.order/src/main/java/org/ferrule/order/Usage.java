/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a plan uses of several resources, such as minutes, contrast, dose and money.
 *
 * @param lines one for each step of the plan
 */
public record Usage(List<Line> lines) {

    /**
     * Sums up to and with a step.
     *
     * @param step the step
     * @param reach chance that it is reached
     * @param expected by resource; a step counts with the chance that it is reached
     * @param worst by resource, if the step is reached
     */
    public record Line(Step step, double reach, List<Double> expected, List<Double> worst) {
    }

    /**
     * The first step that a budget does not cover.
     *
     * @param place of the step in the plan, from 0
     * @param resource the first that runs out there, from 0
     */
    public record Beyond(int place, int resource) {
    }

    /** Keeps what it is given. */
    public Usage {
        lines = List.copyOf(lines);
    }

    /**
     * Returns what a plan uses.
     *
     * @param uses what a step takes of each resource, in the same order for all steps
     * @throws OrderException if steps name different numbers of resources, or less than nothing is used
     */
    public static Usage of(OrderedPlan plan, Function<Step, List<Double>> uses) {
        List<Line> lines = new ArrayList<>();
        Double[] expected = {};
        Double[] worst = {};
        for (Placement placement : plan.placements()) {
            List<Double> used = uses.apply(placement.step());
            if (lines.isEmpty()) {
                expected = zeros(used.size());
                worst = zeros(used.size());
            }
            check(placement.step(), used, expected.length);
            for (int i = 0; i < used.size(); i++) {
                expected[i] += placement.reach() * used.get(i);
                worst[i] += used.get(i);
            }
            lines.add(new Line(placement.step(), placement.reach(), List.of(expected), List.of(worst)));
        }
        return new Usage(lines);
    }

    private static Double[] zeros(int number) {
        Double[] zeros = new Double[number];
        Arrays.fill(zeros, 0.0);
        return zeros;
    }

    private static void check(Step step, List<Double> used, int resources) {
        if (used.size() != resources || used.stream().anyMatch(amount -> !(amount >= 0))) {
            throw new OrderException(
                    step.id() + " uses " + used + ", which are not " + resources + " amounts of 0 or more");
        }
    }

    /**
     * Returns the first step whose worst-case sums a budget does not cover, if there is one.
     *
     * @param budget by resource; infinite where there is no limit
     * @throws OrderException if the budget names another number of resources
     */
    public Optional<Beyond> beyond(List<Double> budget) {
        for (int place = 0; place < lines.size(); place++) {
            List<Double> worst = lines.get(place).worst();
            if (worst.size() != budget.size()) {
                throw new OrderException("the budget " + budget + " is not one of " + worst.size() + " resources");
            }
            for (int i = 0; i < budget.size(); i++) {
                if (worst.get(i) > budget.get(i)) {
                    return Optional.of(new Beyond(place, i));
                }
            }
        }
        return Optional.empty();
    }
}
