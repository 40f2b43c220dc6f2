/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.evidence;

/** What a check has to show: each kind has a picture in the explaining view. */
public sealed interface Evidence permits SharedSection, BendRoom, FlowLeft, LengthChain, Chance {
}
