/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The page that greets, and the way to the demo. */
package org.ferrule.ui.internal.welcome;
