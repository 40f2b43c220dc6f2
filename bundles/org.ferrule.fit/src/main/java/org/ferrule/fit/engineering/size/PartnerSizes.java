/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.verdict.Verdict;

/**
 * What the size of a section does to the verdict of one question.
 *
 * @param question as asked, with the section as printed
 * @param phase going in or coming out
 * @param easiest the answer where the section leaves most room: a shaft that is as thin as it can be, a lumen that is
 *                as wide as is looked for
 * @param hardest the answer at the other end
 * @param flips in rising size; empty when no size changes the verdict
 * @param geometryFlips the same of what the geometry alone says
 */
public record PartnerSizes(FitQuestion question, Phase phase, PhaseAnswer easiest, PhaseAnswer hardest,
        List<Flip> flips, List<Flip> geometryFlips) {

    public PartnerSizes {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(easiest, "easiest");
        Objects.requireNonNull(hardest, "hardest");
        flips = List.copyOf(flips);
        geometryFlips = List.copyOf(geometryFlips);
    }

    /** What keeps the verdict from ever being "fits", or from ever changing; absent when nothing does. */
    public Optional<Holds> heldBy() {
        boolean free = easiest.verdict() == Verdict.FITS && !flips.isEmpty();
        return free ? Optional.empty() : Optional.of(Holds.of(easiest));
    }
}
