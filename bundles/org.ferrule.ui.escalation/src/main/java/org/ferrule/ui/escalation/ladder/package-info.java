/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The plan of a case as a ladder to be read at arm's length, with the wire check and the budgets above it. */
package org.ferrule.ui.escalation.ladder;
