/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** When to leave one way of getting across, or the whole attempt: settings of common practice. */
package org.ferrule.thresholds.stop;
