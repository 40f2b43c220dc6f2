/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What to try next when a device does not pass, what it needs, and when to stop. Plain Java, immutable.
 */
package org.ferrule.escalation;
