/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Why a plan has the order that it has: how far each figure may move before another order is better, and what the
 * conventional order would give up.
 */
package org.ferrule.plansheet.why;
