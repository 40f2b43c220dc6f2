/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The checks of the fit solver's pipeline, and the point at which plug-ins add their own. */
package org.ferrule.fit.check;
