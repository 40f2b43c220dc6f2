/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Formats in which fit charts leave the program. */
package org.ferrule.chart.export;
