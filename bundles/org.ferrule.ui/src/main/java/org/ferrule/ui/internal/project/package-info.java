/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Projects: the demo, folders opened as they are, and wizards for projects and documents. */
package org.ferrule.ui.internal.project;
