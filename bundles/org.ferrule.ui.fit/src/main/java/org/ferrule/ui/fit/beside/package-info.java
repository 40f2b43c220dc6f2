/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What stands beside the matrix and can be folded away: the conditions of the chart. */
package org.ferrule.ui.fit.beside;
