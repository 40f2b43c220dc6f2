/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Steps of a plan that were placed together. Where needs alone decide, whatever is better than what stands before it is
 * there because of it, and belongs to it. Where other rules have a say, it belongs to it only if it needs it; and set-ups
 * belong to what they were made for.
 */
record Group(Block block, List<Step> steps, Set<String> ids, Set<String> needs) {

    /** The groups of a plan, in its order. */
    static List<Group> of(OrderProblem problem, List<Step> steps) {
        Map<String, Set<String>> needs = new HashMap<>();
        problem.setups().forEach(setup -> needs.put(setup.id(), setup.setups()));
        for (Option option : problem.options()) {
            Set<String> all = new HashSet<>(option.setups());
            all.addAll(option.after());
            all.add(option.id());
            needs.put(option.id(), all);
        }
        boolean free = problem.rules().needsOnly();
        List<Group> groups = new ArrayList<>();
        for (Step step : steps) {
            Group last = new Group(new Block(step.cost(), step.chance()), List.of(step), Set.of(step.id()),
                    needs.get(step.id()));
            while (!groups.isEmpty() && last.belongsTo(groups.get(groups.size() - 1), free)) {
                last = groups.remove(groups.size() - 1).with(last);
            }
            groups.add(last);
        }
        return groups;
    }

    private boolean belongsTo(Group before, boolean free) {
        return block.ratio() < before.block.ratio()
                && (free || before.block.chance() == 0 || !Collections.disjoint(needs, before.ids));
    }

    private Group with(Group next) {
        List<Step> allSteps = new ArrayList<>(steps);
        allSteps.addAll(next.steps);
        Set<String> allIds = new HashSet<>(ids);
        allIds.addAll(next.ids);
        Set<String> allNeeds = new HashSet<>(needs);
        allNeeds.addAll(next.needs);
        return new Group(block.then(next.block), allSteps, allIds, allNeeds);
    }
}
