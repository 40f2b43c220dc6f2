/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Laws that hold for every problem, tested on seeded random ones: the least cost is that of trying all orders, and it
 * moves as it must when figures move.
 */
package org.ferrule.order.laws;
