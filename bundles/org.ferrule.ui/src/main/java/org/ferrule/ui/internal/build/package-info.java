/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Looks for problems: the builder for saved documents, the live checks for those being edited, markers for both. */
package org.ferrule.ui.internal.build;
