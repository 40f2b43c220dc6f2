/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order.laws;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.order.Option;
import org.ferrule.order.OrderProblem;
import org.ferrule.order.Setup;

/** The least expected cost by trying every order that the rules allow, as the description of the package says them. */
public final class Enumeration {

    /** What has been done, in vain; the same orders lead on from the same state. */
    private record Done(Map<String, Integer> tries, Set<String> setups, boolean newRiskWaits) {
    }

    /** The best way on: its cost with stopping, and for its own steps cost, chance that all fail, and end. */
    private record Way(double cost, double stepsCost, double fails, Done end) {
        boolean isEmpty(Done start) {
            return end.equals(start);
        }
    }

    private final OrderProblem problem;
    private final List<Integer> tiers;
    private final Map<List<Object>, Way> known = new HashMap<>();

    /** @param problem small enough for that */
    public Enumeration(OrderProblem problem) {
        this.problem = problem;
        TreeSet<Integer> all = Stream
                .concat(problem.setups().stream().map(Setup::tier), problem.options().stream().map(Option::tier))
                .collect(Collectors.toCollection(TreeSet::new));
        tiers = problem.rules().tiersFirst() ? List.copyOf(all) : List.of(Integer.MAX_VALUE);
    }

    /** Returns the least expected cost, stopping included. */
    public double leastCost() {
        return tiers.isEmpty() ? problem.stoppingCost()
                : way(tiers.size() - 1, new Done(Map.of(), Set.of(), false)).cost;
    }

    private Way way(int level, Done done) {
        List<Object> key = List.of(level, done);
        Way way = known.get(key);
        if (way == null) {
            way = level > 0 ? throughLower(level, done) : bestStep(level, done);
            known.put(key, way);
        }
        return way;
    }

    private Way throughLower(int level, Done done) {
        Way lower = way(level - 1, done);
        return lower.isEmpty(done) ? bestStep(level, done)
                : joined(lower.stepsCost, lower.fails, way(level, lower.end));
    }

    private static Way joined(double cost, double fails, Way then) {
        return new Way(cost + fails * then.cost, cost + fails * then.stepsCost, fails * then.fails, then.end);
    }

    private Way bestStep(int level, Done done) {
        Way best = new Way(problem.stoppingCost(), 0, 1, done);
        for (Setup setup : problem.setups()) {
            boolean allowed = setup.tier() <= tiers.get(level) && !done.setups.contains(setup.id())
                    && done.setups.containsAll(setup.setups())
                    && !(problem.rules().oneNewRiskAStep() && setup.newRisk() && done.newRiskWaits)
                    && affordable(done, setup.cost());
            if (allowed) {
                best = better(best, joined(setup.cost(), 1, way(level, with(done, setup))));
            }
        }
        for (Option option : problem.options()) {
            int k = done.tries.getOrDefault(option.id(), 0);
            boolean allowed = option.tier() <= tiers.get(level) && k < option.tries().size()
                    && done.setups.containsAll(option.setups())
                    && option.without().stream().noneMatch(done.setups::containsAll)
                    && done.tries.keySet().containsAll(option.after())
                    && !(problem.rules().oneNewRiskAStep() && k == 0 && option.newRisk() && done.newRiskWaits)
                    && affordable(done, option.tries().get(k).cost());
            if (allowed) {
                double fails = 1 - option.tries().get(k).chance() * discount(done, option);
                best = better(best, joined(option.tries().get(k).cost(), fails, way(level, with(done, option))));
            }
        }
        return best;
    }

    private static Way better(Way best, Way other) {
        return other.cost < best.cost - 1e-9 ? other : best;
    }

    private boolean affordable(Done done, double cost) {
        double spent = problem.setups().stream().filter(s -> done.setups.contains(s.id())).mapToDouble(Setup::cost)
                .sum();
        for (Option option : problem.options()) {
            spent += option.tries().subList(0, done.tries.getOrDefault(option.id(), 0)).stream()
                    .mapToDouble(one -> one.cost()).sum();
        }
        return spent + cost <= problem.rules().budget().orElse(Double.POSITIVE_INFINITY);
    }

    private double discount(Done done, Option option) {
        double factor = 1;
        for (Option other : problem.options()) {
            if (other != option && !other.axis().isEmpty() && other.axis().equals(option.axis())) {
                for (int k = done.tries.getOrDefault(other.id(), 0); k > 0; k--) {
                    factor *= problem.rules().sameAxisDiscount();
                }
            }
        }
        return factor;
    }

    private static Done with(Done done, Setup setup) {
        Set<String> setups = new HashSet<>(done.setups);
        setups.add(setup.id());
        return new Done(done.tries, setups, done.newRiskWaits || setup.newRisk());
    }

    private static Done with(Done done, Option option) {
        Map<String, Integer> tries = new TreeMap<>(done.tries);
        tries.merge(option.id(), 1, Integer::sum);
        return new Done(tries, done.setups, false);
    }
}
