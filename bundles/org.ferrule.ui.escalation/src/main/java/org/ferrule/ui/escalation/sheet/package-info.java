/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The plan of a case as a sheet of paper, shown and exported. */
package org.ferrule.ui.escalation.sheet;
