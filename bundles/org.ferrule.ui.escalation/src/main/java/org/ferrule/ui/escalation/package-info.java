/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The workbench part of the escalation planner: cases, shelves, techniques, and what is ready for them. */
package org.ferrule.ui.escalation;
