/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Claims, bench results and geometry: which of them decides, and where they contradict each other. */
package org.ferrule.fit.authority;
