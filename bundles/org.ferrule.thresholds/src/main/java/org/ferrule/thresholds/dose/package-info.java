/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Published levels of radiation dose, and which a dose has reached. */
package org.ferrule.thresholds.dose;
