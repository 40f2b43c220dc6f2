/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.quantity.bent;

import org.ferrule.chart.bent.Above;

/** A lower class that knows an upper one. */
public class SeesUp extends Above {
}
