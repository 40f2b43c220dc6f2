/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The workbench's parts for fit charts: their editor, the view that explains an answer, the view for one question. */
package org.ferrule.ui.fit;
