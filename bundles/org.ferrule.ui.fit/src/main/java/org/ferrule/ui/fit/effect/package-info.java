/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What an edit that is not saved changes in the charts that are open. */
package org.ferrule.ui.fit.effect;
