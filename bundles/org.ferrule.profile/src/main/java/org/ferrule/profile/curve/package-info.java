/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Diameters of one device along its length, from a landmark, as exact intervals. */
package org.ferrule.profile.curve;
