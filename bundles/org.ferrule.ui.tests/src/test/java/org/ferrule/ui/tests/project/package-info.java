/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The demo, folders opened as projects, the explorer, menus and help. */
package org.ferrule.ui.tests.project;
