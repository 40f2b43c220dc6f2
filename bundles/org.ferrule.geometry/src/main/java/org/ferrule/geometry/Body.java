/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import org.ferrule.quantity.Length;

/** The cross-section of a rigid part that is free to move and to turn in a lumen, and that nothing else overlaps. */
public sealed interface Body permits FreeDisc, Stadium, DiscSet {

    /** Returns the smallest circle round the body alone. */
    Enclosure enclosure();

    /**
     * Returns the smallest circle round the body and a disc that may lie anywhere beside it; the disc is the last of
     * the result's discs.
     *
     * @param disc a diameter of zero or more
     * @throws IllegalArgumentException if the diameter is negative
     */
    Enclosure with(Length disc);
}
