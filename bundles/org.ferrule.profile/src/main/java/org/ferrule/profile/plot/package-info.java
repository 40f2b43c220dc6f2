/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Comparisons as plots: pictures whose parts are named, and which tell where a station lies on them. */
package org.ferrule.profile.plot;
