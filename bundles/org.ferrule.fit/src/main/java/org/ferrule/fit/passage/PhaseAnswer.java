/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.evidence.Evidence;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Reason;
import org.ferrule.fit.verdict.ReasonCode;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * The answer for one phase, with its evidence.
 *
 * @param verdict the answer
 * @param authority on what it rests
 * @param geometry what the geometry alone says; beside {@code verdict} where a stronger authority decides
 * @param clearance at the limiting place; absent when no known figures meet
 * @param limiting the place that decides; absent when no known figures meet
 * @param reach how far the inner tip comes beyond the outer tip (over-the-wire: how much wire is left beyond the outer
 *              tip); absent when lengths are unknown
 * @param reasons decisive ones first
 * @param evidence what the checks have to show
 */
public record PhaseAnswer(Verdict verdict, Authority authority, Verdict geometry, Optional<Clearance> clearance,
        Optional<Limiting> limiting, Optional<Length> reach, List<Reason> reasons,
        List<Evidence> evidence) {

    public PhaseAnswer {
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(authority, "authority");
        Objects.requireNonNull(geometry, "geometry");
        Objects.requireNonNull(clearance, "clearance");
        Objects.requireNonNull(limiting, "limiting");
        Objects.requireNonNull(reach, "reach");
        reasons = List.copyOf(reasons);
        evidence = List.copyOf(evidence);
    }

    /** An answer with nothing to show beside its reasons. */
    public PhaseAnswer(Verdict verdict, Authority authority, Verdict geometry, Optional<Clearance> clearance,
            Optional<Limiting> limiting, Optional<Length> reach, List<Reason> reasons) {
        this(verdict, authority, geometry, clearance, limiting, reach, reasons, List.of());
    }

    /** Whether two authorities contradict each other. */
    public boolean hasConflict() {
        return hasReason(ReasonCode.Weight.CONFLICT);
    }

    /** Whether there is something to watch that does not change the verdict. */
    public boolean hasCaution() {
        return hasReason(ReasonCode.Weight.CAUTION);
    }

    private boolean hasReason(ReasonCode.Weight weight) {
        return reasons.stream().anyMatch(r -> r.code().weight() == weight);
    }
}
