/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Instrumented runs with large documents: they measure, and are no part of the quick tests. */
package org.ferrule.ui.tests.speed;
