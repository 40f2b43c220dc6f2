/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The help view. It paints its pages itself, so that it needs no browser and follows the theme. */
package org.ferrule.ui.internal.help;
