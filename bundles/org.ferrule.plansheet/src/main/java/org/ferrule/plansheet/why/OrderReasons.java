/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.order.Input;
import org.ferrule.order.Input.Kind;
import org.ferrule.order.InputRange;
import org.ferrule.order.Sensitivity;

/**
 * What the order of a plan hangs on. Only the order is asked about: equipment stays as it was chosen, and what cannot be
 * done stays out.
 *
 * @param ranges how far each figure of what was ordered may move, all others as they are
 * @param conventional what the conventional order gives up; absent where the rules of the order allow no such order, or
 *        nothing is planned
 */
public record OrderReasons(List<InputRange> ranges, Optional<GivenUp> conventional) {
    public OrderReasons {
        ranges = List.copyOf(ranges);
        Objects.requireNonNull(conventional, "conventional");
    }

    /** What the order of a plan hangs on; each figure takes some twenty solutions of the ordering problem. */
    public static OrderReasons of(Plan plan) {
        return of(plan, () -> false);
    }

    /**
     * What the order of a plan hangs on.
     *
     * @param cancelled is asked between two figures whether anybody still wants to know
     * @throws CancellationException if nobody does
     */
    public static OrderReasons of(Plan plan, BooleanSupplier cancelled) {
        if (plan.rungs().isEmpty()) {
            return new OrderReasons(List.of(), Optional.empty());
        }
        Sensitivity sensitivity = new Sensitivity(plan.problem(), plan.order());
        List<InputRange> ranges = new ArrayList<>();
        for (Input input : Input.of(plan.problem())) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            ranges.add(sensitivity.range(input));
        }
        return new OrderReasons(ranges, GivenUp.by(plan));
    }

    /** How far the cost of stopping may move; absent where nothing is planned. */
    public Optional<InputRange> stopping() {
        return ranges.stream().filter(range -> range.input().kind() == Kind.STOPPING_COST).findFirst();
    }

    /** How far the figures of a step may move: of a try its chance first, then its cost; of a set-up its cost. */
    public List<InputRange> of(Rung rung) {
        String id = rung.move().id();
        int attempt = rung.placement().step().attempt();
        return ranges.stream().filter(r -> r.input().id().equals(id) && r.input().attempt() == attempt)
                .sorted((one, two) -> Boolean.compare(isCost(one), isCost(two))).toList();
    }

    private static boolean isCost(InputRange range) {
        return range.input().kind() != Kind.TRY_CHANCE;
    }

    /**
     * The figures with which the order changes first, nearest first: by the share of the figure that it has to move.
     *
     * @param most how many at most
     */
    public List<InputRange> nearest(int most) {
        return ranges.stream().filter(range -> Double.isFinite(share(range)))
                .sorted((one, two) -> Double.compare(share(one), share(two))).limit(most).toList();
    }

    /** By which share of itself a figure may move before the order changes; infinite where nothing changes it. */
    static double share(InputRange range) {
        double down = range.low().isPresent() ? range.value() - range.low().getAsDouble() : Double.POSITIVE_INFINITY;
        double up = range.high().isPresent() ? range.high().getAsDouble() - range.value() : Double.POSITIVE_INFINITY;
        double least = Math.min(down, up);
        return least == 0 ? 0 : least / Math.abs(range.value());
    }
}
