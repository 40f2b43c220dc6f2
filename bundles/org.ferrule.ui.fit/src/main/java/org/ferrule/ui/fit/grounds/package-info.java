/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The view that says on what grounds the answer about the selected pair rests. */
package org.ferrule.ui.fit.grounds;
