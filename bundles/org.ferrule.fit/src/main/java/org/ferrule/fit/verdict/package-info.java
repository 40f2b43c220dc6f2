/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Verdicts and their evidence: clearances in three lanes, authorities and coded reasons. */
package org.ferrule.fit.verdict;
