/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests of the editor for device libraries, with real events. */
package org.ferrule.ui.tests.devices;
