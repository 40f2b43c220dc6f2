/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Textbook mechanics of wires, tubes and balloons: for comparing two of them under the same assumptions, as an order of
 * magnitude, and never as what a device does in a patient. The stiffness of real shafts changes along their length and
 * is not published, friction is a guess, and vessels give way. Units stand in the names: N, mm, MPa (N/mm2), radians.
 * No parameter or result is null; figures outside the stated ranges are refused with their names.
 */
package org.ferrule.mechanics;
