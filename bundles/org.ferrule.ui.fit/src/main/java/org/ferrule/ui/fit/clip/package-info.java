/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Texts and tables of texts that go into the clipboard. */
package org.ferrule.ui.fit.clip;
