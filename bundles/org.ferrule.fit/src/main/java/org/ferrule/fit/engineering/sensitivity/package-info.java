/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Which printed dimensions and statements decide most verdicts of a matrix. */
package org.ferrule.fit.engineering.sensitivity;
