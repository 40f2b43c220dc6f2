/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Devices that are found by any of their words while one types. */
package org.ferrule.ui.fit.proposal;
