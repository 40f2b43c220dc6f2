/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.stack.Crossing;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.ui.fit.answer.AskedPair;

/**
 * A stack with its answer. Immutable.
 *
 * @param devices those that were filled in, as they were read, in their order
 * @param levels the number of the level in which each lies
 * @param answer what came out
 * @param rules by which it was answered
 * @param solver that answered
 */
public record AnsweredStack(List<ReadDevice> devices, List<Integer> levels, StackAnswer answer, RuleSet rules,
        FitSolver solver) {

    /** Checks that nothing is missing. */
    public AnsweredStack {
        devices = List.copyOf(devices);
        levels = List.copyOf(levels);
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(solver, "solver");
    }

    /** Returns what one device has to pass. */
    public List<Crossing> crossings(int device) {
        return answer.levels().get(levels.get(device)).crossings().stream()
                .filter(crossing -> crossing.question().inner() == devices.get(device)).toList();
    }

    /** Returns what decides about one device; nothing where none is asked. */
    public Optional<Crossing> deciding(int device, Phase phase) {
        return new LevelAnswer(answer.levels().get(levels.get(device)).level(), crossings(device)).deciding(phase);
    }

    /** Returns the answer that decides about one device; nothing where none is asked. */
    public Optional<PhaseAnswer> verdict(int device, Phase phase) {
        return deciding(device, phase).map(crossing -> crossing.answer().in(phase));
    }

    /** Returns the pair that decides about one device, for the parts that explain pairs. */
    public Optional<AskedPair> pair(int device, Phase phase) {
        return deciding(device, phase)
                .map(crossing -> new AskedPair(crossing.question(), crossing.answer(), solver));
    }
}
