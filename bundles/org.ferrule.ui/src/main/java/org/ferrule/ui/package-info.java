/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Identifiers of the workbench that other bundles refer to. */
package org.ferrule.ui;
