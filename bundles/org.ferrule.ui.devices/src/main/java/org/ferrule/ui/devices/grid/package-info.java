/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The table of devices on the screen: its layers, painting, selection, and typing into cells. */
package org.ferrule.ui.devices.grid;
