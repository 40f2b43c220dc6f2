/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

/** The sex for which the clearance formula has a factor. */
public enum Sex {
    /** Male. */
    MALE,
    /** Female. */
    FEMALE
}
