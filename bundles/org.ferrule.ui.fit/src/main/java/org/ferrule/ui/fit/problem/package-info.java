/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What is wrong or doubtful in a chart and its answers, for the Problems view. */
package org.ferrule.ui.fit.problem;
