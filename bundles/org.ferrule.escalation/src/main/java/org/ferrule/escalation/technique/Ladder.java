/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * All techniques for one situation, in the conventional order, with what belongs to them.
 *
 * @param title in words
 * @param revision as its keeper counts
 * @param facts statements that a case makes, by id: in words, so that they can be asked
 * @param setups all of them
 * @param techniques in the conventional order
 * @param bailOut what must be at hand when something goes wrong, as roles
 * @param stopRules when to stop
 */
public record Ladder(String title, String revision, Map<String, String> facts, List<Setup> setups,
        List<Technique> techniques, List<Role> bailOut, List<StopRule> stopRules) {

    public Ladder {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(revision, "revision");
        facts = Map.copyOf(facts);
        setups = List.copyOf(setups);
        techniques = List.copyOf(techniques);
        bailOut = List.copyOf(bailOut);
        stopRules = List.copyOf(stopRules);
        requireKnown(facts.keySet(), setups, techniques);
    }

    /**
     * The technique of that id.
     *
     * @throws IllegalArgumentException naming it when there is none
     */
    public Technique technique(String id) {
        return techniques.stream().filter(t -> t.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no technique is called \"" + id + "\""));
    }

    /**
     * The set-up of that id.
     *
     * @throws IllegalArgumentException naming it when there is none
     */
    public Setup setup(String id) {
        return setups.stream().filter(s -> s.id().equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no set-up is called \"" + id + "\""));
    }

    /** The set-ups that a move needs, directly or through others, in the order of the ladder; not the move itself. */
    public List<Setup> setupsOf(Move move) {
        Set<String> needed = new HashSet<>();
        addNeeded(move, needed);
        return setups.stream().filter(setup -> needed.contains(setup.id())).toList();
    }

    private void addNeeded(Move move, Set<String> needed) {
        move.setups().stream().filter(needed::add).forEach(id -> addNeeded(setup(id), needed));
    }

    private static void requireKnown(Set<String> facts, List<Setup> setups, List<Technique> techniques) {
        Set<String> ids = new HashSet<>();
        Stream.concat(setups.stream(), techniques.stream()).filter(move -> !ids.add(move.id())).findFirst()
                .ifPresent(move -> {
                    throw new IllegalArgumentException("two moves are called \"" + move.id() + "\"");
                });
        Set<String> known = new HashSet<>();
        setups.forEach(s -> known.add(s.id()));
        Stream.<Move>concat(setups.stream(), techniques.stream()).forEach(move -> {
            requireAll(move, move.setups(), known, "the set-up");
            requireAll(move, factsOf(move), facts, "the fact");
        });
        Set<String> tried = new HashSet<>();
        techniques.forEach(t -> tried.add(t.id()));
        techniques.forEach(t -> requireAll(t, t.after(), tried, "the technique"));
    }

    private static List<String> factsOf(Move move) {
        return move.needs().stream().filter(Need.Fact.class::isInstance).map(need -> ((Need.Fact) need).fact())
                .toList();
    }

    private static void requireAll(Move move, Iterable<String> named, Set<String> known, String what) {
        for (String name : named) {
            if (!known.contains(name)) {
                throw new IllegalArgumentException(
                        "\"" + move.id() + "\" needs " + what + " \"" + name + "\", which nobody describes");
            }
        }
    }
}
