/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.chart.bent;

/** An upper class for a lower one to know. */
public abstract class Above {
}
