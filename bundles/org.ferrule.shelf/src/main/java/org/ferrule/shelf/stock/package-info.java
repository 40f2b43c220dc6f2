/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What lies on a shelf: items, their lots and how many units of each; what is taken and put back; which units go first.
 * All values are immutable; dates are calendar dates without a time, and "today" is always given by the caller.
 */
package org.ferrule.shelf.stock;
