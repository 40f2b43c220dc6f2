/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * How much of a lumen's flow is left with devices in it: the share of the empty lumen's flow at equal pressure drop. It
 * compares arrangements and tells how well contrast will still show; it is no rate in mL/s.
 * <p>
 * The model is fully developed laminar flow of a Newtonian fluid along straight parallel cylinders: a Poisson equation
 * on the cross-section. Left out are the entrance length (about 0.05 Re D), thinning under shear, pulsation, bends, side
 * holes and devices that end within the lumen. Where the devices lie is seldom known, and the answer depends on it by a
 * factor of two: show the interval over all positions, not one number.
 * <p>
 * Lengths come in exact; shares are doubles from 0 to 1. Within the package, places and radii are in radii of the lumen,
 * with its centre at the origin. No parameter or result is null.
 */
package org.ferrule.flow;
