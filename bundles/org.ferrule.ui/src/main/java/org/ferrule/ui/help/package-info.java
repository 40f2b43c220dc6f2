/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The help: pages contributed by bundles, and the way to open one. */
package org.ferrule.ui.help;
