/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.drawing;

/**
 * The disc of a composed section that a handle belongs to.
 *
 * @param section the name of the section
 * @param index its place among the discs of the section
 * @param diameterMm its diameter
 * @param moves whether the handle moves the disc, and not its edge
 */
record DiscSpot(String section, int index, double diameterMm, boolean moves) {
}
