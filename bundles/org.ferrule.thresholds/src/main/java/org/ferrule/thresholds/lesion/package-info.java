/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Published scores and classes of a lesion, in points and letters. No score becomes a chance here: the shares of
 * successes that studies report differ between them and belong to their patients.
 */
package org.ferrule.thresholds.lesion;
