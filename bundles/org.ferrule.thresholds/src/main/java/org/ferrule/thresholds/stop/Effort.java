/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.stop;

/** What has been spent on one planned attempt. */
public enum Effort {
    /** Passes of one device that failed. */
    FAILED_PASSES,
    /** Time in minutes. */
    MINUTES,
    /** Length of one run of a burr in seconds. */
    BURR_RUN_SECONDS,
    /** By how much a burr has slowed down, in turns a minute. */
    BURR_SLOWING_RPM
}
