/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * The system in place, drawn to be read at a glance: how devices lie in each other, what is new and what is out. Not to
 * scale.
 */
package org.ferrule.plansheet.drawing;
