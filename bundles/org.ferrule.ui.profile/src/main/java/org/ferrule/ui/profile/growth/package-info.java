/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** Growth curves of several balloons. */
package org.ferrule.ui.profile.growth;
