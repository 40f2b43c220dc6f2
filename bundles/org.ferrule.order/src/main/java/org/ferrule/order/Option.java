/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.order;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Something that may succeed, and may be tried as often as it has tries.
 *
 * @param id of its own among the options and set-ups of a problem
 * @param tries in their order; chances must not rise. Costs may do what they like
 * @param setups ids of the set-ups that must be in place before the first try
 * @param after ids of the options of which at least one try must have failed before the first try of this one
 * @param tier class of hazard; lower ones come first where the rules say so
 * @param axis what failed tries say something of other options about; empty for none
 * @param newRisk whether its first try brings in a new risk
 * @param without sets of set-ups; while all of one set are in place it cannot be tried
 */
public record Option(String id, List<Try> tries, Set<String> setups, Set<String> after, int tier, String axis,
        boolean newRisk, Set<Set<String>> without) {

    /** @throws OrderException naming the values, where there is no try or chances rise */
    public Option {
        Checks.id(id);
        tries = List.copyOf(tries);
        setups = Set.copyOf(setups);
        after = Set.copyOf(after);
        without = without.stream().map(Set::copyOf).collect(Collectors.toUnmodifiableSet());
        if (tries.isEmpty()) {
            throw new OrderException(id + " has no try");
        }
        for (int k = 1; k < tries.size(); k++) {
            if (tries.get(k).chance() > tries.get(k - 1).chance()) {
                throw new OrderException("the chance of " + id + " rises from " + tries.get(k - 1).chance() + " in try "
                        + k + " to " + tries.get(k).chance() + " in try " + (k + 1));
            }
        }
    }

    /** An option that is possible whatever other set-ups are in place. */
    public Option(String id, List<Try> tries, Set<String> setups, Set<String> after, int tier, String axis,
            boolean newRisk) {
        this(id, tries, setups, after, tier, axis, newRisk, Set.of());
    }

    /** Returns an option that needs nothing, of tier 0, on no axis, without a new risk. */
    public static Option of(String id, Try... tries) {
        return new Option(id, List.of(tries), Set.of(), Set.of(), 0, "", false);
    }

    /** Returns the same option with these set-ups needed. */
    public Option needing(String... ids) {
        return new Option(id, tries, Set.of(ids), after, tier, axis, newRisk, without);
    }

    /** Returns the same option with other tries. */
    public Option withTries(List<Try> others) {
        return new Option(id, others, setups, after, tier, axis, newRisk, without);
    }

    /** Returns the same option, impossible where all set-ups of one of these sets are in place. */
    public Option without(Set<Set<String>> sets) {
        return new Option(id, tries, setups, after, tier, axis, newRisk, sets);
    }
}
