/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Creatinine clearance, published limits of contrast medium, and the points of a published score. */
package org.ferrule.thresholds.renal;
