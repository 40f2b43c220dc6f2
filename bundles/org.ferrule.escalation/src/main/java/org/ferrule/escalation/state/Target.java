/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.state;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.passage.Bend;
import org.ferrule.quantity.Length;

/**
 * Where a device must arrive.
 *
 * @param reach from the tip of the guide catheter to the distal end of the lesion; absent when nobody says
 * @param lesionStart from there to the proximal end of the lesion; absent when nobody says
 * @param vessel reference diameter at the lesion
 * @param branch diameter of a side branch that may be used
 * @param branchReach from the tip of the guide catheter into the branch
 * @param bends of the way
 */
public record Target(Optional<Length> reach, Optional<Length> lesionStart, Optional<Length> vessel,
        Optional<Length> branch,
        Optional<Length> branchReach, List<Bend> bends) {
    public Target {
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(lesionStart, "lesionStart");
        Objects.requireNonNull(vessel, "vessel");
        Objects.requireNonNull(branch, "branch");
        Objects.requireNonNull(branchReach, "branchReach");
        bends = List.copyOf(bends);
    }
}
