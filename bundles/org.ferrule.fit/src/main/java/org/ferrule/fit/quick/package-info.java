/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Answers for the cells of a matrix from plain numbers in flat arrays: the same verdicts, places and clearances as the
 * solver's own checks give for devices that pass alone. What it does not cover it says, and the solver answers.
 */
package org.ferrule.fit.quick;
