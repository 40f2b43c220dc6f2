/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The passage solver: one device through one lumen along the length, tip-first or loaded over the tail of a wire, in
 * and out. It works on immutable records, is safe to use from many threads, and gives its evidence with every verdict.
 */
package org.ferrule.fit.passage;
