/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Fit charts in the real workbench. */
package org.ferrule.ui.tests.fit;
