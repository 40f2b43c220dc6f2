/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Work that must not hold up the screen. */
package org.ferrule.ui.fit.later;
