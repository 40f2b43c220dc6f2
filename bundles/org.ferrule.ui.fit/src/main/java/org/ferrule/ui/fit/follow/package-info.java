/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What views of a project's devices have in common. */
package org.ferrule.ui.fit.follow;
