/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The fit solver's facade. Plain Java, immutable, free of user interface, model and file formats. */
package org.ferrule.fit;
