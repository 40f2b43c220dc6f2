/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.look;

/** On what a look is seen. */
public enum Scheme {
    /** Light paper or a light screen. */
    LIGHT,
    /** A dark screen. */
    DARK
}
