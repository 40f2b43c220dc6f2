/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.stack;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;

/**
 * What was found for one level.
 *
 * @param level the level
 * @param crossings what its devices have to pass: valves first, then the lumen around, then extensions; none for the
 *                  outermost level and for a valve
 */
public record LevelAnswer(Level level, List<Crossing> crossings) {

    public LevelAnswer {
        Objects.requireNonNull(level, "level");
        crossings = List.copyOf(crossings);
    }

    /** The crossing that decides: the worst verdict, among equals the least clearance; absent where none is asked. */
    public Optional<Crossing> deciding(Phase phase) {
        return crossings.stream().max(bySeverity(phase));
    }

    /** The worst verdict; absent where nothing is asked. */
    public Optional<Verdict> verdict(Phase phase) {
        return deciding(phase).map(c -> c.answer().in(phase).verdict());
    }

    static Comparator<Crossing> bySeverity(Phase phase) {
        Comparator<PhaseAnswer> byVerdict = Comparator.comparing(PhaseAnswer::verdict);
        return Comparator.comparing(c -> c.answer().in(phase),
                byVerdict.thenComparing(a -> a.clearance().map(c -> c.worst().negated()).orElse(null),
                        Comparator.nullsFirst(Comparator.naturalOrder())));
    }
}
