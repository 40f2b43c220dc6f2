/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Plans in words, in drawings and on paper. Plain Java, immutable; no parameter or result is null.
 */
package org.ferrule.plansheet;
