/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Revisions of a library compared side by side, by device and value. */
package org.ferrule.ui.devices.revision;
