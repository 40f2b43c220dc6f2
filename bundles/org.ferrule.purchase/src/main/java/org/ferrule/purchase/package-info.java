/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * The smallest or cheapest purchase that makes cases ready with enough rungs of each axis: an integer programme. The
 * solver of a library finds the purchase; every purchase is checked with whole numbers, apart from the solver, before
 * it is told, and what is not confirmed to be the best is told as such.
 */
package org.ferrule.purchase;
