/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** Growth curves of several balloons over each other, from their printed tables alone. */
package org.ferrule.profile.growth;
