/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.chart;

import org.ferrule.fit.matrix.FitMatrix;

/**
 * A chart with its answers. Immutable.
 *
 * @param chart what was asked
 * @param matrix the answers, and what they change
 */
public record SolvedChart(AssembledChart chart, FitMatrix matrix) {
}
