/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The editor for device libraries: its pages, the table of devices, and the form and drawing of one device. */
package org.ferrule.ui.devices;
