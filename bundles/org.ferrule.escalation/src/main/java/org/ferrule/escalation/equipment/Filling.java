/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Length;

/**
 * Whether a balloon, inflated, fills the lumen that it lies in, so that it holds a wire against the wall.
 *
 * @param diameter nominal, of the balloon; absent when it is not known
 * @param lumen largest that the lumen may be; absent when it is not known
 * @param verdict fits when it surely fills, blocked when it surely does not
 */
public record Filling(Optional<Length> diameter, Optional<Length> lumen, Verdict verdict) {
    public Filling {
        Objects.requireNonNull(diameter, "diameter");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(verdict, "verdict");
    }
}
