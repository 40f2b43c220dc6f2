/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Logging attempts by a key. */
package org.ferrule.ui.escalation.log;
