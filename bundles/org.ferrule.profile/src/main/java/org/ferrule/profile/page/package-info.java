/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Comparisons on paper: the plot, the table of differences, findings, sources, rule set, date and caution. */
package org.ferrule.profile.page;
