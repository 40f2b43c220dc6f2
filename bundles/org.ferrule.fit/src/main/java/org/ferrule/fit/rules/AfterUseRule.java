/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;

/**
 * How much a folded balloon's profile grows by one inflation, where nobody states it.
 *
 * @param kinds the device kinds it is for; empty for all
 * @param low smallest factor, at least 1
 * @param centre usual factor, not below {@code low}
 * @param high largest factor, not below {@code centre}
 * @param source who says so
 */
public record AfterUseRule(Set<DeviceKind> kinds, BigDecimal low, BigDecimal centre, BigDecimal high,
        SourceRef source) {

    public AfterUseRule {
        kinds = Set.copyOf(kinds);
        Objects.requireNonNull(source, "source");
        if (low.compareTo(BigDecimal.ONE) < 0 || centre.compareTo(low) < 0 || high.compareTo(centre) < 0) {
            throw new IllegalArgumentException(
                    "growth factors must rise from at least 1: " + low + ", " + centre + ", " + high);
        }
    }
}
