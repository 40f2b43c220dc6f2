/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.purchase;

/** What a purchase should have least of. */
public enum Goal {
    /** The fewest units. */
    SMALLEST,
    /** The lowest sum of prices. */
    CHEAPEST
}
