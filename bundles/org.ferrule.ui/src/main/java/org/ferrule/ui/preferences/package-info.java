/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What the user prefers, for every editor and view to follow. */
package org.ferrule.ui.preferences;
