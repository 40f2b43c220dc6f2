/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** What Quick Access (Ctrl+3) finds beside the platform's own: the devices of all open projects. */
package org.ferrule.ui.internal.find;
