/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What keeps cases from being planned as they are written, for the Problems view. */
package org.ferrule.ui.escalation.problem;
