/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.stop;

/** What ends an attempt whatever has been spent; common practice. */
public enum StopEvent {
    /** The vessel is perforated. */
    PERFORATION,
    /** A side branch is lost. */
    SIDE_BRANCH_LOST,
    /** Pressure or rhythm change. */
    HAEMODYNAMIC_CHANGE,
    /** Nothing is left on the shelf for one more step and one behind it. */
    SHELF_EMPTY
}
