/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Single calculations of teachers and engineers: a form for each calculator, its answer in words and as a picture. */
package org.ferrule.ui.fit.sums;
