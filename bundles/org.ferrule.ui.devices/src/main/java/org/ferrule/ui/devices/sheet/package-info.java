/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The devices of a library as rows and columns: what stands in the cells, and the commands that change it. */
package org.ferrule.ui.devices.sheet;
