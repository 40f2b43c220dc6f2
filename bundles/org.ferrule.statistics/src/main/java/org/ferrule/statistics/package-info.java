/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What may be said of a dimension or a clearance from samples and tolerances: tolerance factors, the chance that parts
 * interfere, stacks of tolerances and sample sizes. Results that decide something are rounded to the careful side, and
 * values outside the stated ranges are refused with their names. No parameter or result is null.
 */
package org.ferrule.statistics;
