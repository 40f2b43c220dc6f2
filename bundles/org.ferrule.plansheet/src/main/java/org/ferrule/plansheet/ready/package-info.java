/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * What plans need of a shelf that they share, and how ready it is, in words.
 */
package org.ferrule.plansheet.ready;
