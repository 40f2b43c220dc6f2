/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.technique.Technique;

/**
 * With which set-ups in place a technique can be done.
 *
 * @param technique the technique
 * @param with set-ups that it needs to be possible anywhere, beyond those that it names
 * @param without sets of set-ups that make it impossible when all of one are there; that still more set-ups might make
 *                it possible again is not used
 * @param sample what was answered where it is possible with the fewest set-ups; else where it first was asked about
 * @param somewhere whether it is possible in any system
 */
record Availability(Technique technique, Set<String> with, Set<Set<String>> without, MoveAnswer sample,
        boolean somewhere) {
    Availability {
        Objects.requireNonNull(technique, "technique");
        with = Set.copyOf(with);
        without = Set.copyOf(without);
        Objects.requireNonNull(sample, "sample");
    }

    /**
     * Reads it from the answers of a technique in all systems, those with fewer set-ups first.
     *
     * @param answers by the set-ups that are there; at least one
     * @param done set-ups that are in place anyway
     */
    static Availability of(Technique technique, Map<Set<String>, MoveAnswer> answers, Set<String> done) {
        List<Set<String>> yes = new ArrayList<>();
        answers.forEach((there, answer) -> {
            if (answer.isPossible()) {
                yes.add(there);
            }
        });
        if (yes.isEmpty()) {
            return new Availability(technique, Set.of(), Set.of(), answers.values().iterator().next(), false);
        }
        Set<String> common = new HashSet<>(yes.get(0));
        yes.forEach(common::retainAll);
        if (!yes.contains(common)) {
            // Several ways lead there, and none is part of all: the one with the fewest set-ups is planned.
            common = new HashSet<>(yes.get(0));
        }
        Set<String> least = common;
        Set<Set<String>> without = new HashSet<>();
        answers.forEach((there, answer) -> {
            if (!answer.isPossible() && there.containsAll(least)) {
                without.add(beyond(there, least));
            }
        });
        return new Availability(technique, beyond(least, done), smallest(without), answers.get(least), true);
    }

    private static Set<String> beyond(Set<String> all, Set<String> less) {
        Set<String> rest = new HashSet<>(all);
        rest.removeAll(less);
        return Set.copyOf(rest);
    }

    private static Set<Set<String>> smallest(Set<Set<String>> sets) {
        Set<Set<String>> smallest = new HashSet<>(sets);
        smallest.removeIf(each -> sets.stream().anyMatch(other -> !other.equals(each) && each.containsAll(other)));
        return smallest;
    }
}
