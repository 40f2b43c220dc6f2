/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Answers about one pair of devices, as parts of the workbench hand them to each other. */
package org.ferrule.ui.fit.answer;
