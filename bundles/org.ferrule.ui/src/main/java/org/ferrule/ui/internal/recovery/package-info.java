/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Unsaved edits outlive a crash: a journal of them, and the list in which they are offered at the next start. */
package org.ferrule.ui.internal.recovery;
