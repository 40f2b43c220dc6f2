/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * The plan of a case: which rungs, in which order, with what equipment, and what is left out and why.
 */
package org.ferrule.escalation.plan;
