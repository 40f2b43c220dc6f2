/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The record of a closed case: what it says, in words, and whether the documents of then are those of today. */
package org.ferrule.engine.closed;
