/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Build steps over the plugins folder of a finished product: the notice of what is shipped under which licence, and
 * the start jar of the command line.
 */
package org.ferrule.shipping;
