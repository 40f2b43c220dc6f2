/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The parts of the editing kit that nobody else needs to see. */
package org.ferrule.ui.internal.edit;
