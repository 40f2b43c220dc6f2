/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.signoff;

import java.util.Objects;

import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.device.Phase;

/**
 * A verdict that is not what it was when the chart was signed off.
 *
 * @param outerKey key of the row
 * @param innerKey key of the column
 * @param outer name of the outer device
 * @param inner name of the inner device
 * @param phase going in or coming out
 * @param before the verdict then
 * @param after the verdict now
 */
public record VerdictChange(String outerKey, String innerKey, String outer, String inner, Phase phase,
        VerdictLook before, VerdictLook after) {

    public VerdictChange {
        Objects.requireNonNull(phase, "phase");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }
}
