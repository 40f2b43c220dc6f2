/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.plan;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.ferrule.escalation.equipment.MoveAnswer;
import org.ferrule.escalation.equipment.Outfitter;
import org.ferrule.escalation.state.SystemState;
import org.ferrule.escalation.technique.Setup;

/**
 * All systems that set-ups can lead to from the one in place: by which set-ups are there, whatever the order in which
 * they came. Set-ups stay.
 */
final class Situations {
    private final Outfitter outfitter;
    private final List<Setup> setups;
    private final Map<Set<String>, SystemState> states = new LinkedHashMap<>();
    private final Map<String, MoveAnswer> firstAnswers = new LinkedHashMap<>();
    private final Set<String> possible = new HashSet<>();

    /**
     * Explores.
     *
     * @param setups those that may matter, in the order of the ladder
     * @param done ids of those in place
     */
    Situations(Outfitter outfitter, List<Setup> setups, Set<String> done, SystemState now) {
        this.outfitter = outfitter;
        this.setups = setups;
        states.put(Set.copyOf(done), now);
        Deque<Set<String>> open = new ArrayDeque<>(states.keySet());
        while (!open.isEmpty()) {
            Set<String> here = open.remove();
            setups.stream().filter(s -> !here.contains(s.id()) && here.containsAll(s.setups()))
                    .forEach(s -> explore(here, s, open));
        }
    }

    private void explore(Set<String> here, Setup setup, Deque<Set<String>> open) {
        MoveAnswer answer = outfitter.outfit(setup, states.get(here));
        firstAnswers.putIfAbsent(setup.id(), answer);
        Set<String> there = new LinkedHashSet<>(here);
        there.add(setup.id());
        if (answer.isPossible()) {
            possible.add(setup.id());
            if (states.putIfAbsent(Set.copyOf(there), answer.after()) == null) {
                open.add(Set.copyOf(there));
            }
        }
    }

    /** The systems, by the set-ups that are there; first the one in place. */
    Map<Set<String>, SystemState> states() {
        return states;
    }

    /** Those of the set-ups that can be done somewhere. */
    List<Setup> possible() {
        return setups.stream().filter(s -> possible.contains(s.id())).toList();
    }

    /** What was answered where a set-up was first asked about; nothing where what it needs could not be done. */
    Map<String, MoveAnswer> firstAnswers() {
        return firstAnswers;
    }
}
