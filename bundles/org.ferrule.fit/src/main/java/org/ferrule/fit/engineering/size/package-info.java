/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** How large a section of a device may be for its partners, and how little tolerance would do. */
package org.ferrule.fit.engineering.size;
