/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The page on which it is set up what a chart asks, of what, for whom and on what paper. */
package org.ferrule.ui.fit.setup;
