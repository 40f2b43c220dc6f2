/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** How quick the workbench is with large documents: run by {@code releng/slow workbench}, not with the tests. */
package org.ferrule.ui.tests.speed;
