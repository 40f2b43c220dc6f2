/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The longitudinal drawing of the device that is being edited. */
package org.ferrule.ui.devices.drawing;
