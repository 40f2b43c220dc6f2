/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.device;

/** Which way a device moves. */
public enum Phase {
    /** It is advanced, with the outlines it has before use. */
    IN,
    /** It is withdrawn, with the outlines it has after use. */
    OUT
}
