/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The calculators that there are. */
package org.ferrule.calc.catalogue;
