/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What calculators answer. */
package org.ferrule.calc.result;
