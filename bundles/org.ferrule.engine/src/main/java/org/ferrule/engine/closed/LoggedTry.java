/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;

import org.ferrule.escalation.technique.Resource;

/**
 * An entry of the log of a closed case.
 *
 * @param move id of the technique or the set-up
 * @param name its name then, where it was planned; else that of today
 * @param ending how it ended
 * @param planned whether it was in the plan
 * @param used what it used up, without what is not stated
 * @param remark empty where there is none
 */
public record LoggedTry(String move, String name, Ending ending, boolean planned, Map<Resource, BigDecimal> used,
        String remark) {
    public LoggedTry {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ending, "ending");
        used = Map.copyOf(used);
        Objects.requireNonNull(remark, "remark");
    }
}
