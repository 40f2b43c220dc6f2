/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Signing a chart off, and what has changed since. */
package org.ferrule.ui.fit.signoff;
