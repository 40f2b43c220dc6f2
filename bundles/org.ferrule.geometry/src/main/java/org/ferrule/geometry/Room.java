/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import org.ferrule.quantity.Length;

/** What is known of the room that a circle has for bodies. */
public enum Room {
    /** Places were found in which the bodies lie in it and do not overlap. */
    FOUND,
    /** It is proved that they have none. */
    NONE,
    /** Neither, as far as was looked. */
    OPEN;

    /** Returns what an answer for the bodies says of a circle of that diameter. */
    static Room of(Enclosure enclosure, Length diameter) {
        if (enclosure.upperDiameter().compareTo(diameter) <= 0) {
            return FOUND;
        }
        return enclosure.lowerDiameter().compareTo(diameter) > 0 ? NONE : OPEN;
    }
}
