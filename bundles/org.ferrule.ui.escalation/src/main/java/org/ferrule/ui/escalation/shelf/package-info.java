/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor for shelves: items, lots, and boxes that are scanned in. */
package org.ferrule.ui.escalation.shelf;
