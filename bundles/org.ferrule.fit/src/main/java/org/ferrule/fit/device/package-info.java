/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Immutable records of devices: shafts, lumens, claims and bench results, with dimensions as printed. Stations along a
 * shaft count from the distal tip, stations along a lumen from its proximal entry. Nothing here is null.
 */
package org.ferrule.fit.device;
