/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests of what every picture of the workbench can do. */
package org.ferrule.ui.tests.picture;
