/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Circles round what lies in one lumen: discs that move freely, an oval shaft, and rigid sets of discs; and a rigid
 * segment in a bend. Sizes come in and go out as exact lengths. A circle is a pair of proved bounds, the upper one rounded up and the lower one
 * rounded down, with the positions of the discs as evidence; positions are doubles in millimetres, with the centre of
 * the enclosing circle at the origin. No parameter or result is null.
 */
package org.ferrule.geometry;
