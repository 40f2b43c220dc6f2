/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.ferrule.escalation.state.Attempt;
import org.ferrule.escalation.state.Outcome;
import org.ferrule.escalation.technique.Ladder;

/**
 * One try that a laboratory may add to its own counts.
 *
 * @param technique its id
 * @param attempt which try of the technique in this case it was, from 1
 * @param success whether the device went across
 */
public record Counted(String technique, int attempt, boolean success) {
    public Counted {
        Objects.requireNonNull(technique, "technique");
        if (attempt < 1) {
            throw new IllegalArgumentException("tries count from 1, not " + attempt);
        }
    }

    /**
     * What a log counts, in its order. What was given up counts for nothing, and so do set-ups and what the ladder does
     * not know; tries beyond those that the ladder describes have no counts to be added to.
     */
    public static List<Counted> of(List<Attempt> log, Ladder ladder) {
        Map<String, Integer> described = new HashMap<>();
        ladder.techniques().forEach(t -> described.put(t.id(), t.tries().size()));
        Map<String, Integer> made = new HashMap<>();
        List<Counted> counted = new ArrayList<>();
        for (Attempt attempt : log) {
            if (attempt.outcome() != Outcome.GIVEN_UP && described.containsKey(attempt.move())) {
                int number = made.merge(attempt.move(), 1, Integer::sum);
                if (number <= described.get(attempt.move())) {
                    counted.add(new Counted(attempt.move(), number, attempt.outcome() == Outcome.CROSSED));
                }
            }
        }
        return counted;
    }
}
