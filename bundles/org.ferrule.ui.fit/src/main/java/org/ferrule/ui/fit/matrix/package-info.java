/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The fit matrix on the screen: what of it is shown in which order, how its cells and heads are painted. */
package org.ferrule.ui.fit.matrix;
