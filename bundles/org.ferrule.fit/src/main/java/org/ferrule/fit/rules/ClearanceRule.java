/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.rules;

import java.util.Objects;
import java.util.Set;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Length;

/**
 * The diametral clearance that must be left between a device and the lumen around it.
 *
 * @param outer the outer kinds it is for; empty for all
 * @param inner the inner kinds it is for; empty for all
 * @param required diametral, 0 or more
 * @param source who says so
 */
public record ClearanceRule(Set<DeviceKind> outer, Set<DeviceKind> inner, Length required, SourceRef source) {

    public ClearanceRule {
        outer = Set.copyOf(outer);
        inner = Set.copyOf(inner);
        Objects.requireNonNull(source, "source");
        if (required.isNegative()) {
            throw new IllegalArgumentException("a required clearance is negative: " + required.mm() + " mm");
        }
    }

    boolean speaksOf(DeviceKind outerKind, DeviceKind innerKind) {
        return (outer.isEmpty() || outer.contains(outerKind)) && (inner.isEmpty() || inner.contains(innerKind));
    }

    int specificity() {
        return (outer.isEmpty() ? 0 : 1) + (inner.isEmpty() ? 0 : 1);
    }
}
