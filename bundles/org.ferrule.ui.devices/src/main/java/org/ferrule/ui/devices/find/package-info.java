/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Finding and replacing texts in the fields of devices, each hit shown before it is changed. */
package org.ferrule.ui.devices.find;
