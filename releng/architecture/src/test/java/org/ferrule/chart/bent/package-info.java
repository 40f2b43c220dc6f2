/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The upper end of an arrow that goes up. */
package org.ferrule.chart.bent;
