/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What a balloon's papers say of it: the table of pressures and diameters, read inside its rows only, the rated burst
 * pressure that a sample supports, and the ratio of a balloon or a burr to the vessel beside published rules. Figures
 * are for comparison and teaching; the instructions for use decide. No parameter or result is null.
 */
package org.ferrule.balloon;
