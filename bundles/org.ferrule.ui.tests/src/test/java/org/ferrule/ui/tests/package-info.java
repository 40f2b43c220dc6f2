/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests in a real workbench: they need a display. */
package org.ferrule.ui.tests;
