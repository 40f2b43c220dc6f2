/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Published limits and scores as settings, each with its source: what is read as text and what is plausible, when a
 * threshold is reached, points that may be known in part. Sources disagree; they are told side by side and none is the
 * answer. A score is points, never a chance, and nothing here tells one. Nothing is kept of what is given. Figures are for
 * comparison and teaching; the judgement is the physician's. No parameter or result is null.
 */
package org.ferrule.thresholds;
