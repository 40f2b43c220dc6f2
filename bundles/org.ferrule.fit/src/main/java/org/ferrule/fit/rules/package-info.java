/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The rule set: spans of stated figures, required clearances and growth by use, each with a named source. */
package org.ferrule.fit.rules;
