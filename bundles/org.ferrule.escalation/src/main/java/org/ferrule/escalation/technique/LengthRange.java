/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;
import java.util.Optional;

import org.ferrule.quantity.Length;

/**
 * A range of lengths, ends included.
 *
 * @param from absent when open
 * @param to absent when open
 */
public record LengthRange(Optional<Length> from, Optional<Length> to) {

    /** Any length. */
    public static final LengthRange ANY = new LengthRange(Optional.empty(), Optional.empty());

    public LengthRange {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        if (from.isPresent() && to.isPresent() && from.get().compareTo(to.get()) > 0) {
            throw new IllegalArgumentException(
                    "a range is out of order: " + from.get().mm() + " to " + to.get().mm() + " mm");
        }
    }

    /** Whether any length lies in it, known or not. */
    public boolean isAny() {
        return from.isEmpty() && to.isEmpty();
    }

    /** Whether it lies in the range. */
    public boolean contains(Length length) {
        return from.map(f -> f.compareTo(length) <= 0).orElse(true)
                && to.map(t -> length.compareTo(t) <= 0).orElse(true);
    }
}
