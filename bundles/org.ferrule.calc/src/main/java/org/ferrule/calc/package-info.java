/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Named calculators that describe themselves: their parameters with kind, range and help, and an answer with its unit,
 * method, validity and source. A command line or a form can be made for each from what it says. Texts are read as people
 * type them; answers are decimal numbers, rounded to the careful side. No parameter or result is null.
 */
package org.ferrule.calc;
