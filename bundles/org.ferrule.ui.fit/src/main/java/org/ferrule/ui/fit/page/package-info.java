/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The pages of a chart as they are printed, and their export into files. */
package org.ferrule.ui.fit.page;
