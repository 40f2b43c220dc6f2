/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToLongFunction;

import org.ferrule.shelf.ready.Need;
import org.ferrule.shelf.stock.Item;
import org.ferrule.shelf.stock.Lot;

/**
 * A purchase problem as an integer programme. Variables: whether a rung is made ready; how many units a need takes from
 * a lot or from what is bought; how many units are bought. A need of a rung that is made ready has all its units, lots
 * and orders give no more than they have, and each axis has its rungs.
 */
final class PurchaseModel {

    /** Where units come from: a lot, or what is bought of an item. */
    private record Source(String item, Optional<Lot> lot) {
    }

    /** How a need gets its units: the variables of its rung and of what it takes. */
    private record Supply(int chosen, int count, List<Integer> flows) {
    }

    /** An axis of a case. */
    record Axis(PurchaseCase planned, String name) {
    }

    private final PurchaseProblem problem;
    private final IntegerProgramme programme;
    private final Map<Integer, Allocation> flows = new TreeMap<>();
    private final Map<Source, Map<Integer, Long>> users = new HashMap<>();
    private final List<Supply> supplies = new ArrayList<>();
    private final Map<Integer, Axis> slack = new TreeMap<>();

    private PurchaseModel(PurchaseProblem problem, Duration limit) {
        this.problem = problem;
        programme = new IntegerProgramme(limit);
    }

    /** The programme that minimises the weights of what is bought. */
    static PurchaseModel ofWeights(PurchaseProblem problem, ToLongFunction<Offer> weight, Duration limit) {
        PurchaseModel model = new PurchaseModel(problem, limit);
        axes(problem).forEach(axis -> model.cover(axis, Optional.empty()));
        model.limitSources(weight);
        return model;
    }

    /** The programme that minimises the rungs that some axes lack, with purchases for nothing. */
    static PurchaseModel ofGaps(PurchaseProblem problem, List<Axis> axes, Duration limit) {
        PurchaseModel model = new PurchaseModel(problem, limit);
        for (Axis axis : axes) {
            int lacking = model.programme.variable(problem.rungsOf(axis.name()), 1);
            model.slack.put(lacking, axis);
            model.cover(axis, Optional.of(lacking));
        }
        model.limitSources(offer -> 0);
        return model;
    }

    /** Returns all axes of all cases. */
    static List<Axis> axes(PurchaseProblem problem) {
        return problem.cases().stream().flatMap(planned -> planned.axes().stream().map(name -> new Axis(planned, name)))
                .toList();
    }

    IntegerProgramme programme() {
        return programme;
    }

    private void cover(Axis axis, Optional<Integer> lacking) {
        Map<Integer, Long> ready = new TreeMap<>();
        for (Rung rung : axis.planned().rungsOf(axis.name())) {
            int chosen = programme.variable(1, 0);
            ready.put(chosen, 1L);
            rung.needs().forEach(need -> supply(axis.planned(), rung, need, chosen));
        }
        lacking.ifPresent(variable -> ready.put(variable, 1L));
        int wanted = problem.rungsOf(axis.name());
        programme.between(wanted, ready, (long) wanted + ready.size());
    }

    /**
     * At least the units that a need has: more do no harm, and with "as many as" both of the library's linear solvers
     * overlook the same solutions, in one of some thousand programmes.
     */
    private void supply(PurchaseCase planned, Rung rung, Need need, int chosen) {
        Map<Integer, Long> units = new TreeMap<>();
        List<Integer> numbers = new ArrayList<>();
        for (Source source : sources(need, planned)) {
            int flow = programme.variable(need.count(), 0);
            numbers.add(flow);
            units.put(flow, 1L);
            flows.put(flow, new Allocation(planned.id(), rung.id(), need.id(), source.item(), source.lot(), 1));
            users.computeIfAbsent(source, key -> new TreeMap<>()).put(flow, 1L);
        }
        supplies.add(new Supply(chosen, need.count(), numbers));
        long most = (long) need.count() * units.size();
        units.put(chosen, (long) -need.count());
        programme.between(0, units, most);
    }

    private List<Source> sources(Need need, PurchaseCase planned) {
        List<Source> sources = new ArrayList<>();
        for (String id : need.items()) {
            problem.shelf().item(id).map(item -> item.firstExpiredFirst(planned.date())).orElse(List.of())
                    .forEach(lot -> sources.add(new Source(id, Optional.of(lot))));
            problem.offerOf(id).filter(offer -> offer.isUsableOn(planned.date()))
                    .ifPresent(offer -> sources.add(new Source(id, Optional.empty())));
        }
        return sources;
    }

    private void limitSources(ToLongFunction<Offer> weight) {
        for (Item item : problem.shelf().items()) {
            item.lots().forEach(lot -> limit(new Source(item.id(), Optional.of(lot)), lot.quantity()));
        }
        for (Offer offer : problem.offers()) {
            Map<Integer, Long> flow = users.get(new Source(offer.item(), Optional.empty()));
            if (flow != null) {
                Map<Integer, Long> terms = new TreeMap<>(flow);
                long most = flow.keySet().stream().mapToLong(programme::upper).sum();
                int order = programme.variable(most, weight.applyAsLong(offer));
                terms.put(order, -1L);
                programme.between(-most, terms, 0);
            }
        }
    }

    private void limit(Source source, long most) {
        Map<Integer, Long> flow = users.get(source);
        if (flow != null) {
            programme.between(0, flow, most);
        }
    }

    /** Returns the units that rungs count on: of those that are made ready, and no more than they need. */
    List<Allocation> allocations(long[] values) {
        List<Allocation> allocations = new ArrayList<>();
        for (Supply supply : supplies) {
            long left = values[supply.chosen()] * supply.count();
            for (int flow : supply.flows()) {
                long units = Math.min(left, values[flow]);
                if (units > 0) {
                    allocations.add(flows.get(flow).withCount(Math.toIntExact(units)));
                    left -= units;
                }
            }
        }
        return allocations;
    }

    /** Returns the numbers of rungs that axes lack. */
    Map<Axis, Long> lacking(long[] values) {
        Map<Axis, Long> lacking = new HashMap<>();
        slack.forEach((variable, axis) -> lacking.put(axis, values[variable]));
        return lacking;
    }
}
