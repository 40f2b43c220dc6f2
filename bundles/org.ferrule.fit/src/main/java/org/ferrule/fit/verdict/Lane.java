/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.verdict;

/** Which ends of the figures are compared. */
public enum Lane {
    /** Smallest lumen, largest device. */
    WORST,
    /** Centres. */
    NOMINAL,
    /** Largest lumen, smallest device. */
    BEST
}
