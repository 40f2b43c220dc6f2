/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity.bent;

import java.awt.Color;

/** A kernel class that knows a toolkit. */
public record Paints(Color colour) {
}
