/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Pictures of the help about device libraries, drawn from the demo. */
package org.ferrule.ui.devices.help;
