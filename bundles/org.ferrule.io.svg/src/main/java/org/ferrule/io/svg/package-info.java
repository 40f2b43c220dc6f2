/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Writes pictures as SVG 1.1: vector graphics with text that stays text, in millimetres. */
package org.ferrule.io.svg;
