/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Diameters as intervals, made from printed dimensions under a rule set. */
package org.ferrule.fit.figure;
