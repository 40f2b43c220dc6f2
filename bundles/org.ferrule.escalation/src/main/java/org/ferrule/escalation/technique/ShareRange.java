/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.OptionalDouble;

/**
 * A range of shares, ends included.
 *
 * @param from absent when open; above 0
 * @param to absent when open; above 0
 */
public record ShareRange(OptionalDouble from, OptionalDouble to) {

    /** Any share. */
    public static final ShareRange ANY = new ShareRange(OptionalDouble.empty(), OptionalDouble.empty());

    public ShareRange {
        if (from.isPresent() && !(from.getAsDouble() > 0) || to.isPresent() && !(to.getAsDouble() > 0)
                || from.isPresent() && to.isPresent() && from.getAsDouble() > to.getAsDouble()) {
            throw new IllegalArgumentException("no range of shares: " + from + " to " + to);
        }
    }

    /** Whether any share lies in it, known or not. */
    public boolean isAny() {
        return from.isEmpty() && to.isEmpty();
    }

    /** Whether it lies in the range. */
    public boolean contains(double share) {
        return share >= from.orElse(0) && share <= to.orElse(Double.POSITIVE_INFINITY);
    }
}
