/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

/** How grave a problem is. */
public enum Severity {

    /** Wrong: what depends on it cannot be answered. */
    ERROR,
    /** Doubtful: somebody should look at it. */
    WARNING,
    /** Worth knowing. */
    INFO
}
