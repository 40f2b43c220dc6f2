/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** A table of rows that can be sorted, and that stays quick with thousands of them. */
package org.ferrule.ui.devices.table;
