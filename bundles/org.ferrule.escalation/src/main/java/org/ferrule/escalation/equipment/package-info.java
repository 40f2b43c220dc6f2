/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Which device can play a role in a system: chosen from the shelf through the fit solver, with the reasons.
 */
package org.ferrule.escalation.equipment;
