/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Devices that lie in each other, from the outside to the inside, each answered in what holds it. */
package org.ferrule.ui.fit.stack;
