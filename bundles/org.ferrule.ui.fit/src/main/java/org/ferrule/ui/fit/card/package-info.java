/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The card that explains a cell of the matrix where it stands. */
package org.ferrule.ui.fit.card;
