/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Closing a case that is over: what is frozen, counted and taken off the shelf, as edits that can be undone. */
package org.ferrule.ui.escalation.closing;
