/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.passage;

/** How a device enters a lumen. */
public enum Direction {
    /** Its distal tip enters the proximal entry of the lumen. */
    TIP_FIRST("tip first"),
    /** The outer device is loaded over the tail of a wire in place: the wire's tail enters the lumen distally. */
    OVER_WIRE_TAIL("over wire tail");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    /** The word for it, as documents and screens write it. */
    public String word() {
        return word;
    }
}
