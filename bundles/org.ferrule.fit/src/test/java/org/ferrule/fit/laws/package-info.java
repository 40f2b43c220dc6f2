/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Laws of the solver that hold for every passage, tested on seeded random ones: devices and lumens of several sections
 * with tapers, intervals, unknown stretches, exit ports and profiles after use. Lengths count in steps of half an inch
 * and diameters in 127 nm, so that every figure can be printed exactly in millimetres, inches and French.
 */
package org.ferrule.fit.laws;
