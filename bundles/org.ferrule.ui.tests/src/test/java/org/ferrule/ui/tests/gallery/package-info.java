/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Pictures of everything that the workbench shows, for people to look at: `releng/screenshots` takes them. What there is
 * to be shown comes from the registries of the workbench.
 */
package org.ferrule.ui.tests.gallery;
