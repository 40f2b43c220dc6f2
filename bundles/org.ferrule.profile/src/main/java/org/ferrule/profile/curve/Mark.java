/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.curve;

import java.util.Objects;

import org.ferrule.quantity.Length;

/**
 * Something at a place of a device that is no diameter. Stations count from the landmark, proximal ones are positive.
 *
 * @param kind what it is
 * @param name of the section or of the lumen, or the number of the marker from the tip
 * @param from its distal end
 * @param to its proximal end; the same where it has no length or nobody states it
 */
public record Mark(Kind kind, String name, Length from, Length to) {

    /** What a mark is. */
    public enum Kind {
        /** A radiopaque marker. */
        MARKER,
        /** The side port at which a wire lumen leaves the shaft. */
        EXIT_PORT,
        /** The collar of a guide extension's tube. */
        COLLAR,
        /** A section that cannot bend. */
        RIGID
    }

    public Mark {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException(kind + " \"" + name + "\" runs from " + from + " back to " + to);
        }
    }
}
