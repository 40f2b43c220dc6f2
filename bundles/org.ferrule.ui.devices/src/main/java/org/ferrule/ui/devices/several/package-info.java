/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** One form for several devices at once. */
package org.ferrule.ui.devices.several;
