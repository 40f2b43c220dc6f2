/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** What a rule changes: one matrix under two rule sets. */
package org.ferrule.fit.engineering.bias;
