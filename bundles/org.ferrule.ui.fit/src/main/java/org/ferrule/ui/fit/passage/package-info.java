/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The view for the daily question without a chart: one system in place, one device to be passed. */
package org.ferrule.ui.fit.passage;
