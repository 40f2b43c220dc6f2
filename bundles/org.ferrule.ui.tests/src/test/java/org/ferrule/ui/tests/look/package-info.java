/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Tests of the controls and the looks that all parts of the workbench share. */
package org.ferrule.ui.tests.look;
