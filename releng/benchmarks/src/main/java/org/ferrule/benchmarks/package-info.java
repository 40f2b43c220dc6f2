/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Benchmarks, run by releng/slow; their figures are looked at by people and fail nothing. */
package org.ferrule.benchmarks;
