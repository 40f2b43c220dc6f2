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
import org.ferrule.fit.verdict.Reason;
import org.ferrule.statistics.JointProbability;

/**
 * What was found for a stack.
 *
 * @param levels level by level, outermost first
 * @param access the outermost device beside the vessel; absent when one of both is not known
 * @param chance between what the chance lies that any of the crossings overlaps, where standard deviations are stated;
 *               bounds, since neighbouring crossings share a device
 * @param tips how far each device reaches; empty when the length of the outermost one is not stated
 * @param reasons what there is to say of the whole, beside the answers of the levels
 */
public record StackAnswer(List<LevelAnswer> levels, Optional<AccessRatio> access, Optional<JointProbability> chance,
        List<Tip> tips, List<Reason> reasons) {

    public StackAnswer {
        levels = List.copyOf(levels);
        Objects.requireNonNull(access, "access");
        Objects.requireNonNull(chance, "chance");
        tips = List.copyOf(tips);
        reasons = List.copyOf(reasons);
    }

    /** The level that decides: worst verdict, then least clearance, then outermost; absent where nothing is asked. */
    public Optional<LevelAnswer> weakest(Phase phase) {
        Comparator<LevelAnswer> bySeverity = Comparator.comparing(l -> l.deciding(phase).orElseThrow(),
                LevelAnswer.bySeverity(phase));
        return levels.stream().filter(l -> l.deciding(phase).isPresent())
                .reduce((a, b) -> bySeverity.compare(b, a) > 0 ? b : a);
    }
}
