/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The table of differences between devices that are compared. */
package org.ferrule.profile.table;
