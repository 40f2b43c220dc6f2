/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Questions asked again with one printed dimension changed. */
package org.ferrule.fit.engineering.change;
