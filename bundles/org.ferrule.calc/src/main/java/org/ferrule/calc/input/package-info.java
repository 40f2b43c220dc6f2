/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What calculators ask for: parameters, the kinds of values that they take as text, and the arguments given. */
package org.ferrule.calc.input;
