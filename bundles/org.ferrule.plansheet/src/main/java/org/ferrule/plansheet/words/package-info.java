/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What a plan says, in words. {@link org.ferrule.plansheet.words.PlanWords} is where to begin. Chances stand here only as
 * the inputs that they are; that of the whole plan is never said.
 */
package org.ferrule.plansheet.words;
