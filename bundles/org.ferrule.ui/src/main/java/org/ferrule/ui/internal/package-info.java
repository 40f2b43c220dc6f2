/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The application: workbench life cycle, window, menus and perspective. */
package org.ferrule.ui.internal;
