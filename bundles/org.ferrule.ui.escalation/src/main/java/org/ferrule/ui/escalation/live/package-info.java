/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Cases that are planned anew whenever they or what they refer to are edited. */
package org.ferrule.ui.escalation.live;
