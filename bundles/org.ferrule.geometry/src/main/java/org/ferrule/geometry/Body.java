/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

/** A rigid outline that may lie and turn anywhere in a lumen, as long as it overlaps no other one. */
public sealed interface Body permits FreeDisc, Stadium, DiscSet {
}
