/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor of fit charts, and how it follows the answers while documents are edited. */
package org.ferrule.ui.fit.chart;
