/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The compliance table of a balloon beside its curve. */
package org.ferrule.ui.devices.compliance;
