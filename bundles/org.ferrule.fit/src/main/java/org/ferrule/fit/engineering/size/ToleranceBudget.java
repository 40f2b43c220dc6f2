/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.engineering.size;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.verdict.Clearance;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * How much less tolerance would turn "tight" into "fits" at the limiting place.
 *
 * @param clearance there
 * @param required clearance
 * @param contributors the figures whose spread eats up the clearance
 * @param missingWithoutSpread what would still be missing if no part had any spread; zero when tolerances can do it
 * @param afterSharing the verdict of the solver with every contributor's interval cut by its share; another place may
 *                     then be the tightest. Absent when no cut of tolerances does it
 */
public record ToleranceBudget(Clearance clearance, Length required, List<Contributor> contributors,
        Length missingWithoutSpread, Optional<Verdict> afterSharing) {

    public ToleranceBudget {
        Objects.requireNonNull(clearance, "clearance");
        Objects.requireNonNull(required, "required");
        contributors = List.copyOf(contributors);
        Objects.requireNonNull(missingWithoutSpread, "missingWithoutSpread");
        Objects.requireNonNull(afterSharing, "afterSharing");
    }

    /** What the worst clearance lacks of the required one: more than zero. */
    public Length missing() {
        return required.minus(clearance.worst());
    }

    /** The required clearance with which it would fit as it is; absent when the worst case overlaps. */
    public Optional<Length> requiredInstead() {
        return clearance.worst().isNegative() ? Optional.empty() : Optional.of(clearance.worst());
    }
}
