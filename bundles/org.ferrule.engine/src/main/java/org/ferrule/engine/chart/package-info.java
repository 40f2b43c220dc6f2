/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** From a chart document and its libraries to a solved matrix. */
package org.ferrule.engine.chart;
