/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.csv;

/** How a chart becomes rows. */
public enum CsvLayout {
    /** A row for every pair, with all that is known of it. */
    PAIRS,
    /** A row for every outer device, a column for every inner one, as on paper. */
    MATRIX
}
